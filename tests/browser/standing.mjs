// What stands in the light: trees, sheds and far hills measured and tried, by mouse and by keyboard alone.
import assert from 'node:assert/strict'
import { axeFaults, newPage, overflowPx, settled } from './site.mjs'

const bank = 'bank-below-the-house'
const garden = 'garden-falling-to-the-house'
const button = (page, name) => page.getByRole('button', { name, exact: true })
const undoOf = (page, name) => page.getByRole('button', { name: `Undo: ${name}`, exact: true })

async function openDemo(site, demo, options) {
  const page = await newPage(site, { reducedMotion: 'reduce', ...options })
  await page.goto(`${site.url}?demo=${demo}`)
  await settled(page)
  return page
}

async function openDesk(page, name) {
  if ((await page.locator('.desk-head').count()) === 0) await page.keyboard.press('1')
  const from = (await page.locator('.desk-head').count()) ? '.desk-head' : '.margin'
  await page.locator(from).getByRole('button', { name, exact: true }).click()
  await page.locator('.desk-head [aria-current]', { hasText: name }).waitFor()
}

/** Types a figure and leaves the field. */
async function give(scope, label, figure) {
  const field = scope.getByLabel(label, { exact: true })
  await field.fill(String(figure))
  await field.press('Tab')
}

/** Hours of direct sun of every zone on a clear day of the month on show. */
async function sunHours(page) {
  await page.keyboard.press('3')
  await page.locator('#sun-title').waitFor()
  await page.locator('.margin .month-picker').getByLabel('June').check()
  await settled(page)
  const cells = await page.locator('section[aria-labelledby=sun-title] tbody tr').allInnerTexts()
  return cells.map((row) => Number(/(\d+\.\d) h/.exec(row)?.[1]))
}

/** Presses Tab until what has this name has the focus. */
async function tabTo(page, name) {
  for (let press = 0; press < 250; press++) {
    await page.keyboard.press('Tab')
    const focused = await page.evaluate(() => {
      const at = document.activeElement
      return at?.labels?.[0]?.textContent?.trim() ?? at?.textContent?.trim() ?? ''
    })
    if (name.test(focused)) return
  }
  assert.fail(`${name} cannot be reached with Tab`)
}

export const standingTests = []
const test = (name, run) => standingTests.push({ name, run })

test('a tree takes no light until its height is known, then takes some, and more when its crown is wider', async (site) => {
  const page = await openDemo(site, bank)
  const before = await sunHours(page)
  await openDesk(page, 'Around the plot')
  await page.getByLabel('Add a', { exact: true }).first().selectOption('tree')
  await undoOf(page, 'add tree').waitFor()
  const tree = page.getByRole('group', { name: 'Tree 2', exact: true })
  await tree.getByText('throws no shadow yet').waitFor()
  await settled(page)
  assert.deepEqual(await sunHours(page), before, 'no height, no shadow')
  await openDesk(page, 'Around the plot')
  await give(tree, 'Height above the ground', 9)
  await undoOf(page, 'change the height of Tree 2').waitFor()
  await tree.locator('.thing-sketch').waitFor()
  await give(tree, 'Width of the crown', 3)
  await settled(page)
  const slim = await sunHours(page)
  await openDesk(page, 'Around the plot')
  await give(tree, 'Width of the crown', 8)
  await undoOf(page, 'change the measures of Tree 2').waitFor()
  await settled(page)
  const wide = await sunHours(page)
  const total = (hours) => hours.reduce((sum, one) => sum + one, 0)
  assert.ok(total(slim) < total(before), `${slim} less than ${before}`)
  assert.ok(total(wide) < total(slim), `${wide} less than ${slim}`)
  await openDesk(page, 'Around the plot')
  await tree.getByLabel('It is a').selectOption('building')
  await undoOf(page, 'change the kind of Tree 2').waitFor()
  await tree.getByText('4 corners').waitFor()
  assert.equal(await tree.getByLabel('Width of the crown').count(), 0)
})

test('a height is worked out by two angles, a usual size says that it is one', async (site) => {
  const page = await openDemo(site, garden)
  await openDesk(page, 'Around the plot')
  await page.getByLabel('Add a', { exact: true }).first().selectOption('building')
  const shed = page.getByRole('group', { name: 'Building', exact: true })
  await shed.getByRole('button', { name: /^garden shed, 2 m to the eaves/ }).click()
  await undoOf(page, 'take a usual size for Building').waitFor()
  assert.equal(await shed.getByLabel('Notes').inputValue(), 'Its height is a usual one, not measured.')
  await shed.getByText('Its height by angles').click()
  await give(shed, 'Level distance to it', 10)
  await give(shed, 'Angle to its top, up', 10)
  await give(shed, 'Angle to its foot, down is negative', -5)
  await shed.getByRole('button', { name: 'Take 2.64 m' }).click()
  await page.getByText(/The ridge of Building at 2.5 m is below its eaves at 2.64 m/).waitFor()
  await give(shed, 'Ridge above the ground', 3)
  await shed.getByRole('button', { name: 'Take 2.64 m' }).click()
  await undoOf(page, 'change the height of Building').waitFor()
  assert.equal(await shed.getByLabel('Notes').inputValue(), '')
})

test('a trial changes nothing until it is made so, and that is undone in one step', async (site) => {
  const page = await openDemo(site, garden)
  await openDesk(page, 'Try a change')
  const cut = page.getByRole('group', { name: 'Hedge lowered to 1.2 m', exact: true })
  await cut.getByText(/^Direct sun on a clear day at midsummer: /).waitFor()
  await page.locator('#new-trial-thing').selectOption({ label: 'Walnut of the neighbour' })
  await page.locator('#new-trial-way').selectOption('crownWidthM')
  await page.getByText('Now: 10 m.').first().waitFor()
  await give(page, 'Its crown is then wide', 4)
  await button(page, 'Try it').click()
  await undoOf(page, 'begin a trial').waitFor()
  const slim = page.getByRole('group', { name: 'Walnut of the neighbour with another crown', exact: true })
  await slim.getByText(/^Direct sun on a clear day/).waitFor()
  await slim.getByText('Ask your local authority first').waitFor()
  await slim.getByText('Have an arborist look at it').waitFor()
  await settled(page)
  const before = await sunHours(page)
  await openDesk(page, 'Try a change')
  await slim.getByRole('button', { name: 'Make it so' }).click()
  await slim.waitFor({ state: 'detached' })
  await settled(page)
  const after = await sunHours(page)
  assert.ok(
    after.some((hours, at) => hours > before[at]) && after.every((hours, at) => hours >= before[at]),
    `${after} after ${before}`,
  )
  await openDesk(page, 'Around the plot')
  const walnut = page.getByRole('group', { name: 'Walnut of the neighbour', exact: true })
  assert.equal(await walnut.getByLabel('Width of the crown').inputValue(), '4')
  await undoOf(page, 'make it so: Walnut of the neighbour with another crown').click()
  await page.waitForFunction(() => document.querySelector('#walnut-crownWidthM')?.value === '10', undefined, {
    timeout: 5000,
  })
  await openDesk(page, 'Try a change')
  await slim.waitFor()
})

test('a trial is begun, made so and kept by the keyboard alone', async (site) => {
  const page = await openDemo(site, garden)
  await tabTo(page, /^Try a change$/)
  await page.keyboard.press('Enter')
  await page.locator('#new-trial-thing').waitFor()
  await tabTo(page, /^What is done to it$/)
  await page.keyboard.press('ArrowDown')
  await tabTo(page, /^It is then high$/)
  await page.keyboard.type('7,5')
  await page.keyboard.press('Enter')
  await undoOf(page, 'begin a trial').waitFor()
  await page.getByRole('group', { name: 'Walnut of the neighbour of another height', exact: true }).waitFor()
  // Of the trials the new one is the last.
  for (let trial = 0; trial < 3; trial++) await tabTo(page, /^Make it so$/)
  await page.keyboard.press('Enter')
  await undoOf(page, 'make it so: Walnut of the neighbour of another height').waitFor()
  await page.getByText(/^Kept on this device, \d\d:\d\d$/).waitFor()
  await page.waitForTimeout(300)
  await page.goto(site.url)
  await settled(page)
  await openDesk(page, 'Around the plot')
  assert.equal(await page.locator('#walnut-height').inputValue(), '7.5')
})

test('far hills are added by figures, pasted, turned from the compass, and removed', async (site) => {
  const page = await openDemo(site, bank)
  const before = await sunHours(page)
  await openDesk(page, 'Far hills')
  await give(page, 'Direction', 250)
  await page.getByLabel('Height of the skyline there').fill('25')
  await page.keyboard.press('Enter')
  await undoOf(page, 'add a direction of the skyline').waitFor()
  await page.waitForFunction(() => document.activeElement?.id === 'far-azimuth')
  await page.getByText('Paste many at once').click()
  await page.locator('#far-paste').fill('azimuth\tangle\n200\t0\n300\t0\n')
  await button(page, 'Add these').click()
  await undoOf(page, 'add 2 directions of the skyline').waitFor()
  await page.getByRole('img', { name: /^Far hills, highest in the west: 25°/ }).waitFor()
  await settled(page)
  const after = await sunHours(page)
  assert.ok(
    after.some((hours, at) => hours < before[at]),
    `${after} after ${before}`,
  )
  await openDesk(page, 'Far hills')
  await page.getByLabel('Directions are read by compass').check()
  await page.locator('#far-day').fill('2026-06-01')
  await page.getByText(/ what is read here on that day/).waitFor()
  await give(page, 'Direction', 100)
  await give(page, 'Height of the skyline there', 2)
  await button(page, 'Add it').click()
  const first = page.getByLabel('Direction from true north, °, row 1')
  await page.waitForFunction(() => document.querySelectorAll('.edit-table tbody tr').length === 4)
  assert.notEqual(await first.inputValue(), '100')
  assert.ok(Math.abs(Number(await first.inputValue()) - 100) < 5)
  await button(page, 'Remove them all').click()
  await page.getByText('No far hill is given: the horizon is open.').waitFor()
})

test('sunshine counts once all twelve months are given, and the clock is that of the zone', async (site) => {
  const page = await openDemo(site, bank)
  await openDesk(page, 'Climate')
  const cell = (month) => page.getByLabel(`${month}: Bright sunshine, h a day`)
  await page.evaluate(() => {
    const input = document.querySelector('[aria-label="January: Bright sunshine, h a day"]')
    const clipboardData = new DataTransfer()
    clipboardData.setData('text', '1.7 2.6 3.7 5.5 6.3 6.4 6.4 5.8 4.7 3.3 2.1')
    input?.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }))
  })
  await page.getByText('11 of 12 months. It counts once all twelve are given.').waitFor()
  await cell('December').fill('15')
  await cell('December').press('Tab')
  await page.getByText(/Sunshine of 15 h a day in December/).waitFor()
  await cell('December').fill('1.5')
  await cell('December').press('Tab')
  await page.getByText('The sun is told by the hours of bright sunshine.').waitFor()
  await openDesk(page, 'Place')
  await page.getByLabel('Time zone', { exact: true }).selectOption('Pacific/Auckland')
  await undoOf(page, 'change the time zone').waitFor()
  await page.getByLabel('Time zone', { exact: true }).selectOption('')
  await page.getByText('Times are told by the sun: 12 is when it is highest.').waitFor()
})

test('on the plan a tree is put down with its crown around it', async (site) => {
  const page = await openDemo(site, garden)
  await openDesk(page, 'Around the plot')
  await button(page, 'Work on the plan').click()
  await button(page, 'Close the field book').click()
  await page.locator('path.map-crown').first().waitFor()
  const count = await page.locator('path.map-crown').count()
  await button(page, 'tree').click()
  await give(page, 'Next point: east', '8')
  await give(page, 'Next point: north', '20')
  await button(page, 'Put it there').click()
  await undoOf(page, 'add tree').waitFor()
  await give(page, 'Height', 6)
  await give(page, 'Width of the crown', 5)
  await page.waitForFunction((n) => document.querySelectorAll('path.map-crown').length === n, count + 1)
})

for (const [width, colorScheme] of [
  [1440, 'dark'],
  [768, 'light'],
  [360, 'light'],
])
  test(`what stands, far hills and trials: no faults at ${width} px, ${colorScheme}`, async (site) => {
    const page = await openDemo(site, garden, { viewport: { width, height: 800 }, colorScheme })
    for (const name of ['Around the plot', 'Far hills', 'Try a change', 'Climate', 'Place']) {
      await openDesk(page, name)
      for (const summary of await page.locator('.desk summary').all()) await summary.click()
      assert.equal(await overflowPx(page), 0, name)
      assert.deepEqual(await axeFaults(page), [], name)
    }
  })
