// Editing the ground: levels, lines, outline, sections, what stands around, and a picture under the plan.
import assert from 'node:assert/strict'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { crc32, deflateSync } from 'node:zlib'
import { axeFaults, newPage, overflowPx, root, settled } from './site.mjs'

const garden = 'garden-falling-to-the-house'
const button = (page, name) => page.getByRole('button', { name, exact: true })
const undoOf = (page, name) => page.getByRole('button', { name: `Undo: ${name}`, exact: true })
const pages = ['Levels', 'Lines', 'Outline and holes', 'Sections', 'Around the plot', 'Accuracy', 'Backdrop']
const subjects = [
  'Zones',
  'Levels',
  'Lines',
  'Outline and holes',
  'House, walls, trees',
  'Beyond the boundary',
  'Viewpoints',
  'Sections',
  'Backdrop',
]

async function openGarden(site, options) {
  const page = await newPage(site, { reducedMotion: 'reduce', ...options })
  await page.goto(`${site.url}?demo=${garden}`)
  await settled(page)
  return page
}

async function openDesk(page, name) {
  await page.locator('.margin').getByRole('button', { name, exact: true }).click()
  await page.locator('.desk-head [aria-current]', { hasText: name }).waitFor()
}

/** The plan, ready to work on one subject. */
async function openPlan(page, subject) {
  await openDesk(page, 'Outline and holes')
  await button(page, 'Work on the plan').click()
  await button(page, 'Close the field book').click()
  const word = page.locator('.plan-subjects').getByRole('button', { name: subject, exact: true })
  await word.click()
  await page.locator('.plan-map .leaflet-overlay-pane svg').waitFor()
}

/** Types a figure and leaves the field. */
async function give(page, label, figure) {
  const field = page.getByLabel(label, { exact: true })
  await field.fill(String(figure))
  await field.press('Tab')
}

/** The garden as a plan of many levels on a plane. */
function planOf(count) {
  const plan = JSON.parse(readFileSync(join(root, `data/demos/${garden}.lynchet.json`), 'utf8'))
  const points = Array.from({ length: count }, (_, row) => ({
    mark: `L${row + 1}`,
    eastM: (row % 100) * 0.5,
    northM: Math.floor(row / 100) * 0.8,
    levelM: 100 + 0.16 * Math.floor(row / 100),
  }))
  const survey = { ground: { kind: 'levels', points }, obstacles: [], aboveM: 0 }
  return {
    ...plan,
    name: 'Many levels',
    survey,
    zones: [],
    choices: [],
    overrides: [],
    trials: [],
    soil: plan.soil.slice(0, 1),
  }
}

async function openFile(page, plan) {
  const chooser = page.waitForEvent('filechooser')
  await button(page, 'Open').click()
  await (
    await chooser
  ).setFiles({
    name: 'plan.lynchet.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(plan)),
  })
}

/** A grey picture as PNG. */
function greyPng(widthPx, heightPx) {
  const chunk = (kind, data) => {
    const body = Buffer.concat([Buffer.from(kind), data])
    const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)]
    length.writeUInt32BE(data.length)
    sum.writeUInt32BE(crc32(body))
    return Buffer.concat([length, body, sum])
  }
  const head = Buffer.alloc(13)
  head.writeUInt32BE(widthPx, 0)
  head.writeUInt32BE(heightPx, 4)
  head[8] = 8
  const rows = Buffer.alloc((widthPx + 1) * heightPx, 160)
  for (let row = 0; row < heightPx; row++) rows[row * (widthPx + 1)] = 0
  const parts = [chunk('IHDR', head), chunk('IDAT', deflateSync(rows)), chunk('IEND', Buffer.alloc(0))]
  return Buffer.concat([Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]), ...parts])
}

export const surveyTests = []
const test = (name, run) => surveyTests.push({ name, run })

test('a level is found, changed, noted in the undo, and a second one in its place is refused', async (site) => {
  const page = await openGarden(site)
  await openDesk(page, 'Levels')
  await give(page, 'Find a level by its mark, row or code', '60')
  await button(page, 'Find it').click()
  await page.locator('tr.picked', { hasText: '60' }).waitFor()
  await give(page, 'Level, m of level 60', '215.9')
  await undoOf(page, 'change level 60').waitFor()
  await give(page, 'East, m of level 60', '12.7')
  await undoOf(page, 'move level 60').click()
  await undoOf(page, 'change level 60').waitFor()
  await give(page, 'Find a level by its mark, row or code', '2')
  await button(page, 'Find it').click()
  await give(page, 'East, m of level 2', '0')
  await page.getByText('Level 1 stands there already.').waitFor()
  assert.equal(await page.getByLabel('East, m of level 2', { exact: true }).inputValue(), '4')
  await undoOf(page, 'change level 60').waitFor()
})

test('5,000 levels open, are found and changed without a long wait', async (site) => {
  const page = await newPage(site)
  await page.goto(`${site.url}?demo=${garden}`)
  await settled(page)
  await openFile(page, planOf(5000))
  await page.locator('.plan-name', { hasText: 'Many levels' }).waitFor()
  await page.getByText('spot levels, 5000 of them').waitFor()
  await settled(page)
  await openDesk(page, 'Levels')
  assert.ok((await page.locator('.edit-table tbody tr').count()) < 60, 'a page at a time')
  await give(page, 'Find a level by its mark, row or code', 'L4321')
  await button(page, 'Find it').click()
  await page.locator('tr.picked', { hasText: '4321' }).waitFor()
  const started = Date.now()
  await give(page, 'Level, m of level L4321', '109')
  await undoOf(page, 'change level L4321').waitFor()
  assert.ok(Date.now() - started < 3000, `the change took ${Date.now() - started} ms`)
  await button(page, 'Work on the levels on the plan').click()
  await page.locator('canvas.map-levels').waitFor()
  await button(page, 'Next one').click()
  await page.locator('.plan-figures b', { hasText: 'Level L' }).waitFor()
})

test('on the plan a level is put down, moved by figures and by arrow keys, from the keyboard', async (site) => {
  const page = await openGarden(site)
  await openPlan(page, 'Levels')
  await button(page, 'level').press('Enter')
  await give(page, 'Next point: east', '6.5')
  await give(page, 'Next point: north', '12.5')
  await button(page, 'Put it there').press('Enter')
  await undoOf(page, 'add level').waitFor()
  await page.locator('.plan-figures b', { hasText: 'Level 113' }).waitFor()
  await page.getByText('spot levels, 113 of them').waitFor()
  await give(page, 'Level', '214.2')
  await undoOf(page, 'change level 113').waitFor()
  await button(page, 'Leave it').press('Enter')
  const mark = page.getByRole('button', { name: 'level 113', exact: true })
  await mark.focus()
  await mark.press('ArrowRight')
  await mark.press('Shift+ArrowUp')
  await undoOf(page, 'move level 113').waitFor()
  await page.waitForFunction(
    () =>
      [...document.querySelectorAll('.plan-figures input')].map(({ value }) => value).join() ===
      '6.6,13.5,214.2',
  )
  await button(page, 'Take out level 113').press('Enter')
  await page.getByText('spot levels, 112 of them').waitFor()
})

test('a wall is drawn by touch, and its levels on each side are typed', async (site) => {
  const page = await openGarden(site)
  await openPlan(page, 'Lines')
  await button(page, 'wall or step').click()
  const map = page.locator('.plan-map')
  await map.scrollIntoViewIfNeeded()
  const box = await map.boundingBox()
  for (const [across, down] of [
    [0.38, 0.62],
    [0.45, 0.63],
  ])
    await page.mouse.click(box.x + box.width * across, box.y + box.height * down)
  await page.locator('.plan-figures b', { hasText: '2 set' }).waitFor()
  await button(page, 'Finish it').click()
  await undoOf(page, 'add wall or step').waitFor()
  await give(page, 'Level on the left', '215')
  await undoOf(page, 'change wall or step, line-1').waitFor()
  await button(page, 'As a table').click()
  const left = page.getByLabel('Point 1 of wall or step, line-1: Level on the left, m')
  await left.waitFor()
  assert.equal(await left.inputValue(), '215')
})

test('a section is drawn large by its word, and its end is dragged', async (site) => {
  const page = await openGarden(site)
  await openDesk(page, 'Sections')
  await button(page, 'Add a section across the middle').click()
  await undoOf(page, 'add a section').waitFor()
  const words = page.getByRole('button', { name: /^Draw \S+ large, as A$/ }).last()
  const [, name] = /^Draw (\S+) large/.exec((await words.innerText()).trim())
  await words.click()
  await undoOf(page, `draw section ${name} large`).waitFor()
  await settled(page)
  await button(page, 'Draw one on the plan').click()
  await button(page, 'Close the field book').click()
  await button(page, 'section A, drawn large').waitFor({ state: 'detached' })
  await page.locator('.plan-subjects').getByRole('button', { name: 'Sections', exact: true }).click()
  const map = page.locator('.plan-map')
  await map.scrollIntoViewIfNeeded()
  // The line is picked where it is drawn.
  const line = await page.locator('path.map-section').first().boundingBox()
  await page.mouse.click(line.x + line.width / 2, line.y + line.height / 2)
  const end = page.getByRole('button', { name: 'Corner 1 of section A, drawn large', exact: true })
  await end.waitFor()
  const from = await end.boundingBox()
  await page.mouse.move(from.x + from.width / 2, from.y + from.height / 2)
  await page.mouse.down()
  await page.mouse.move(from.x + from.width / 2 + 3, from.y + from.height / 2 + 40, { steps: 6 })
  await page.mouse.up()
  await undoOf(page, 'move section A, drawn large').waitFor()
})

test('what lies beyond, a viewpoint and a hole are put down and kept', async (site) => {
  const page = await openGarden(site)
  await openDesk(page, 'Around the plot')
  await page.getByLabel('Say what lies beyond a stretch').selectOption('field')
  await undoOf(page, 'add field beyond').waitFor()
  const uphill = page
    .getByRole('group', { name: 'Field', exact: true })
    .getByLabel(/It rises and sheds water/)
  await uphill.fill('30')
  await uphill.press('Tab')
  await undoOf(page, 'change the ground beyond Field').waitFor()
  await page.locator('#add-view').selectOption('seat')
  await undoOf(page, 'add seat').waitFor()
  await page.locator('.desk-head').getByRole('button', { name: 'Outline and holes', exact: true }).click()
  await button(page, 'Add a hole in the middle').click()
  await undoOf(page, 'add a hole').waitFor()
  const hole = page.getByRole('group', { name: 'Hole 1' }).getByLabel('Corner 1, metres east')
  await hole.fill('500')
  await hole.press('Tab')
  await page.getByText(/cuts the side from corner/).waitFor()
})

test('an outline that crosses itself is refused in words, and the plan stays as it was', async (site) => {
  const page = await openGarden(site)
  await openDesk(page, 'Outline and holes')
  await page.getByLabel('Corner 2, metres east').first().waitFor()
  await give(page, 'Corner 2, metres north', '40')
  await page.getByText(/The side from corner \d cuts the side from corner \d/).waitFor()
  assert.ok(await button(page, 'Undo').isDisabled())
  assert.notEqual(await page.getByLabel('Corner 2, metres north').inputValue(), '40')
})

test('a scanned plan is scaled by two points, turned to north and laid under the plan', async (site) => {
  const page = await openGarden(site)
  await openDesk(page, 'Backdrop')
  const chooser = page.waitForEvent('filechooser')
  await button(page, 'Choose a picture').click()
  await (await chooser).setFiles({ name: 'scan.png', mimeType: 'image/png', buffer: greyPng(400, 200) })
  await page.locator('.picture img').waitFor()
  assert.ok(await button(page, 'Lay it under the plan').isDisabled())
  const box = await page.locator('.picture').boundingBox()
  await page.mouse.click(box.x + box.width / 4, box.y + box.height / 2)
  await page.mouse.click(box.x + (box.width * 3) / 4, box.y + box.height / 2)
  await give(page, 'First point: right of the left edge', '100')
  await give(page, 'First point: below the top edge', '100')
  await give(page, 'Second point: right of the left edge', '300')
  await give(page, 'Second point: below the top edge', '100')
  await give(page, 'Distance between the two points, on plan', '20')
  await give(page, 'Bearing, first to second, from true north', '60')
  await page.getByText('A pixel covers 10.0 cm. The top of the picture points to 330.0°.').waitFor()
  await button(page, 'Lay it under the plan').click()
  await undoOf(page, 'lay a picture under the plan').waitFor()
  await button(page, 'Drag it on the plan').click()
  const laid = page.locator('img.map-picture')
  await laid.waitFor({ state: 'attached' })
  const turnDeg = await laid.evaluate((image) => {
    const { a, b } = new DOMMatrix(getComputedStyle(image).transform)
    return (Math.atan2(b, a) * 180) / Math.PI
  })
  assert.ok(Math.abs(turnDeg + 30) < 0.5, `turned by ${turnDeg}°`)
})

test('a picture of another kind is refused in words', async (site) => {
  const page = await openGarden(site)
  await openDesk(page, 'Backdrop')
  const chooser = page.waitForEvent('filechooser')
  await button(page, 'Choose a picture').click()
  await (
    await chooser
  ).setFiles({ name: 'broken.png', mimeType: 'image/png', buffer: Buffer.from('not a picture') })
  await page.getByText('The picture cannot be read.').waitFor()
})

test('the plan is shaded with its key, and a drop is followed by touch and by figures', async (site) => {
  const page = await openGarden(site)
  await openPlan(page, 'Zones')
  await page.getByLabel('Shade the plan by').selectOption('gradient')
  await page.locator('.map-picture').waitFor()
  const key = page.locator('.shade-key')
  await key.getByText('10 to 15', { exact: false }).waitFor()
  assert.match(await key.innerText(), /m² on plan/)
  await page.getByLabel('Follow a drop of water').check()
  await give(page, 'It falls, east', 8)
  await give(page, 'north', 30)
  await page
    .locator('.drop-said', { hasText: /A drop from here runs \d+\.\d m, falls \d+\.\d\d m/ })
    .waitFor()
  await page.locator('.map-drop').waitFor()
  await give(page, 'north', 300)
  await page.locator('.drop-said', { hasText: 'That place is off the plot.' }).waitFor()
  assert.deepEqual(await axeFaults(page), [])
})

test('names from a file are words on the plan, never markup', async (site) => {
  const page = await openGarden(site)
  const plan = JSON.parse(readFileSync(join(root, `data/demos/${garden}.lynchet.json`), 'utf8'))
  const hostile = '<img src=x onerror="document.title=1">'
  for (const obstacle of plan.survey.obstacles) obstacle.name = hostile
  for (const each of plan.survey.beyond) each.name = hostile
  plan.survey.sections[0].name = '<b>B</b>'
  plan.name = 'Hostile names'
  await openFile(page, plan)
  await page.locator('.plan-name', { hasText: 'Hostile names' }).waitFor()
  await settled(page)
  await openPlan(page, 'Zones')
  const thing = page.locator('.map-thing.house').first()
  await thing.waitFor()
  await settled(page)
  // Findings that arrive while the pointer rests draw the plan anew and close the words: point again.
  const words = page.locator('.leaflet-tooltip', { hasText: hostile }).first()
  for (let turn = 0; turn < 10 && !(await words.isVisible()); turn++) {
    await page.mouse.move(0, 0)
    await thing.hover({ force: true })
    await page.waitForTimeout(200)
  }
  await words.waitFor()
  assert.equal(await page.locator('.plan-map img[src="x"], .plan-map b').count(), 0)
})

for (const [width, colorScheme] of [
  [1440, 'dark'],
  [768, 'light'],
  [360, 'light'],
])
  test(`field book and plan of the ground: no faults at ${width} px, ${colorScheme}`, async (site) => {
    const page = await openGarden(site, { viewport: { width, height: 800 }, colorScheme })
    await openDesk(page, 'Levels')
    for (const name of pages) {
      await page.locator('.desk-head').getByRole('button', { name, exact: true }).click()
      await page.locator('.desk-head [aria-current]', { hasText: name }).waitFor()
      assert.equal(await overflowPx(page), 0, name)
      assert.deepEqual(await axeFaults(page), [], name)
    }
    await button(page, 'Close the field book').click()
    await openPlan(page, 'Zones')
    for (const name of subjects) {
      const word = page.locator('.plan-subjects').getByRole('button', { name, exact: true })
      await word.click()
      const next = button(page, 'Next one')
      if ((await next.count()) > 0) {
        await next.click()
        await page.locator('.map-handle').first().waitFor()
      }
      assert.equal(await overflowPx(page), 0, name)
      assert.deepEqual(await axeFaults(page), [], `plan, ${name}`)
    }
  })
