// The starts: booking a level on a phone, legs by clinometer, a survey file seen before it is kept, a compass corrected.
import assert from 'node:assert/strict'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { axeFaults, newPage, overflowPx, root, settled } from './site.mjs'

const phone = { viewport: { width: 360, height: 740 }, hasTouch: true }
const files = join(root, 'tests/truth/files')
const button = (page, name) => page.getByRole('button', { name, exact: true })
const stage = (page, name) => page.locator('.stage-nav').getByRole('button', { name, exact: true }).click()

async function openStart(site, way, options) {
  const page = await newPage(site, { reducedMotion: 'reduce', ...options })
  await page.goto(site.url)
  await button(page, way).click()
  return page
}

async function measureBy(page, name) {
  await page
    .locator('.method-choice')
    .getByRole('radio', { name: new RegExp(`^${name}`) })
    .check()
  await page.locator('.method-notes').waitFor()
}

/** Types a figure with the large keys into the figure that is lit. */
async function keyIn(page, figures) {
  const keys = page.getByRole('group', { name: 'Keys' })
  for (const figure of figures) await keys.getByRole('button', { name: figure, exact: true }).click()
}

/** One reading, with the keys alone; a distance of '' is a point beside the line. */
async function read(page, { kind, staff, distance }) {
  if (kind) await page.locator('.sight-kinds label', { hasText: kind }).click()
  await page.getByRole('textbox', { name: 'On the staff' }).click()
  await keyIn(page, staff)
  if (distance !== undefined)
    await page.getByRole('textbox', { name: 'Distance down the line' }).fill(distance)
  await button(page, 'Book it and move on').click()
}

async function clean(page, what) {
  assert.equal(await overflowPx(page), 0, `${what} scrolls sideways`)
  assert.deepEqual(await axeFaults(page), [], what)
}

/** The plan as it is kept, handed out as a file. */
async function savedPlan(page) {
  const waiting = page.waitForEvent('download')
  await button(page, 'Save a copy').click()
  return JSON.parse(readFileSync(await (await waiting).path(), 'utf8'))
}

/** Two set-ups down and home again. By hand: it comes home 12 mm high, 6 mm for each set-up. */
const loop = [
  { staff: '0.512' },
  { staff: '1.734', distance: '4' },
  { kind: 'Fore sight', staff: '3.905', distance: '8' },
  { staff: '3.617' },
  { kind: 'Fore sight', staff: '0.212', distance: '' },
]

async function bookedLoop(page) {
  await measureBy(page, 'Level and staff')
  await clean(page, 'how to measure')
  await stage(page, 'Book')
  for (const [at, reading] of loop.entries()) {
    await read(page, reading)
    await page.locator('.staff-state', { hasText: `${at + 1} booked` }).waitFor()
  }
}

/** In the page: whether the book that is kept on the device has so many lines. */
const draftLines = (count) =>
  new Promise((resolve, reject) => {
    const opening = indexedDB.open('lynchet')
    opening.onerror = () => reject(opening.error)
    opening.onsuccess = () => {
      const reading = opening.result.transaction('kept').objectStore('kept').get('draft')
      reading.onerror = () => reject(reading.error)
      reading.onsuccess = () => {
        opening.result.close()
        resolve(reading.result?.books?.[0]?.rows?.length === count)
      }
    }
  })

export const startTests = []
const test = (name, run) => startTests.push({ name, run })

test('a level loop is booked on a phone, closed, shared out, and kept with its book', async (site) => {
  const page = await openStart(site, 'A profile down the slope', phone)
  await bookedLoop(page)
  await page.locator('.staff-state', { hasText: 'level 100.012 m' }).waitFor()
  for (const key of await page.locator('.staff-keys button').all()) {
    const box = await key.boundingBox()
    assert.ok(box.height >= 44 && box.width >= 44, `a key is ${box.width} by ${box.height}`)
  }
  await clean(page, 'booking')
  await stage(page, 'Check')
  await button(page, 'It ends where it began').click()
  await page.getByText('It comes out 12.0 mm too high.').waitFor()
  await page.getByLabel('It may miss by').selectOption('set-ups-5')
  await page.getByText(/7\.1 mm are allowed: too much/).waitFor()
  await page.getByLabel('It may miss by').selectOption('garden-20')
  await page.getByText(/28\.3 mm are allowed: good enough/).waitFor()
  await page.getByLabel('Share what it misses out over the set-ups').check()
  await page.getByText('Shared out: 6.0 mm down for each of 2 set-ups.').waitFor()
  await page.locator('.book-lines b', { hasText: '98.772' }).waitFor()
  assert.equal(await page.locator('.book-checks td', { hasText: /^agrees$/ }).count(), 2)
  await page.getByLabel('Worked out by').selectOption('height-of-collimation')
  await page.getByRole('columnheader', { name: 'Collimation' }).waitFor()
  await page.locator('.book-lines b', { hasText: '98.772' }).waitFor()
  await clean(page, 'the book looked over')
  await stage(page, 'Plan')
  await page.getByLabel('What you call it').waitFor()
  await clean(page, 'the plan')
  await button(page, 'Show me my bank').click()
  await settled(page)
  await page.locator('.answer .says', { hasText: '3.4 m' }).waitFor()
})

test('the book and its method stand in the plan that is saved', async (site) => {
  const page = await openStart(site, 'A profile down the slope')
  await measureBy(page, 'Level and staff')
  for (const reading of loop) await read(page, reading)
  await page.locator('.staff-state', { hasText: '5 booked' }).waitFor()
  await button(page, 'Show me my bank').click()
  await settled(page)
  const { survey } = await savedPlan(page)
  assert.equal(survey.accuracy.methodId, 'level-and-staff')
  assert.deepEqual(
    survey.books[0].rows.map(({ backM, interM, foreM }) => [backM, interM, foreM]),
    [
      [0.512, undefined, undefined],
      [undefined, 1.734, undefined],
      [3.617, undefined, 3.905],
      [undefined, undefined, 0.212],
    ],
  )
  assert.deepEqual(
    survey.ground.stations.map(({ distanceM, levelM }) => [distanceM, levelM]),
    [
      [0, 100],
      [4, 98.778],
      [8, 96.607],
    ],
  )
})

test('a half-written book is there again after a reload, and a reading can be taken back', async (site) => {
  const page = await openStart(site, 'A profile down the slope', phone)
  await measureBy(page, 'Level and staff')
  await stage(page, 'Book')
  await read(page, { staff: '0.512' })
  await read(page, { staff: '1.734' })
  await page.locator('.staff-state', { hasText: '2 booked' }).waitFor()
  await page.waitForFunction(draftLines, 2)
  await page.reload()
  await button(page, 'A profile down the slope').click()
  await page.getByText('Your book from last time is here again.').waitFor()
  await page.locator('.staff-state', { hasText: '2 booked' }).waitFor()
  await button(page, 'Take it back').click()
  await page.locator('.staff-state', { hasText: '1 booked; level 100.000 m' }).waitFor()
  await page.locator('.sight-kinds label', { hasText: 'Back sight' }).click()
  await page.getByRole('textbox', { name: 'On the staff' }).fill('1.1')
  await page.getByText('The level stands already and has its back sight.').waitFor()
  assert.ok(await button(page, 'Book it and move on').isDisabled())
})

test('legs by tape and clinometer, with the keys, to the sheet; its field sheet is ready to print', async (site) => {
  const page = await openStart(site, 'A profile down the slope', phone)
  await measureBy(page, 'Tape and clinometer')
  await button(page, 'Print a field sheet').click()
  const sheet = page.frameLocator('iframe[title="Field sheet to print"]')
  // The frame is there for the printer alone, not to be seen.
  await sheet.locator('h1', { hasText: 'Tape and clinometer' }).waitFor({ state: 'attached' })
  await stage(page, 'Book')
  for (const [length, angle] of [
    ['4.2', '12'],
    ['3.6', '24'],
    ['5', '8'],
  ]) {
    await page.getByRole('textbox', { name: 'Length along the ground' }).click()
    await keyIn(page, length)
    await page.getByRole('textbox', { name: 'Angle' }).click()
    await keyIn(page, angle)
    await button(page, 'Book it and move on').click()
  }
  // By hand: 4.2 sin 12° + 3.6 sin 24° + 5 sin 8° = 3.033 m down, 4.2 cos 12° + 3.6 cos 24° + 5 cos 8° = 12.348 m out.
  await page.locator('.staff-state', { hasText: '3.033 m below the start, 12.348 m out' }).waitFor()
  await clean(page, 'legs')
  await stage(page, 'Check')
  await page.getByLabel('Angle, °, line 2').fill('x')
  await page.getByLabel('Angle, °, line 2').press('Tab')
  await page.getByText('line 2 of the book, angle').waitFor()
  await stage(page, 'Plan')
  await button(page, 'Show me my bank').click()
  await settled(page)
  await page.locator('.answer .says', { hasText: '3.0 m' }).waitFor()
})

test('a LandXML survey in feet is seen, its part and unit confirmed, and kept', async (site) => {
  const page = await openStart(site, 'A level survey')
  assert.ok(await button(page, 'Keep this survey').isDisabled())
  await page.locator('#levels-file').setInputFiles(join(files, 'landxml-us-survey-feet.xml'))
  await page.locator('.survey-parts li').first().waitFor()
  await page.getByText(/Still to say: which part of the file is the ground/).waitFor()
  await page.getByRole('checkbox', { name: /^EG & bank/ }).check()
  await page.getByText(/That puts its middle at 35\.\d+° north, 80\.\d+° west/).waitFor()
  assert.equal(await page.getByLabel('Lengths are in').inputValue(), 'us-ft')
  await page.locator('.notes-list li', { hasText: 'faces marked invisible' }).waitFor()
  await clean(page, 'a survey seen')
  await button(page, 'Keep this survey').click()
  await settled(page)
  const plan = await savedPlan(page)
  // US survey foot: 1200/3937 m.
  const levels = plan.survey.ground.points.map(({ levelM }) => levelM)
  assert.ok(Math.abs(Math.min(...levels) - (811 * 1200) / 3937) < 1e-6, `lowest is ${Math.min(...levels)}`)
  assert.ok(Math.abs(plan.site.longitudeDeg + 80.674) < 0.01)
  assert.equal(plan.survey.ground.faces.length, 4)
})

for (const [file, says] of [
  ['gdal.asc', 'An ASCII grid was read from gdal.asc.'],
  ['float32-27700.tif', 'A GeoTIFF grid was read'],
  ['dxf-feet-r2010.dxf', 'A DXF drawing was read'],
  ['points-27700.geojson', 'GeoJSON was read'],
])
  test(`${file} is read in the page and drawn`, async (site) => {
    const page = await openStart(site, 'A level survey', phone)
    await page.locator('#levels-file').setInputFiles(join(files, file))
    await page.locator('.said', { hasText: says }).waitFor()
    await page.locator('.levels-plot').waitFor()
    await page.locator('.survey-parts li').first().waitFor()
    await clean(page, file)
  })

test('the place of one file is not kept for the next', async (site) => {
  const page = await openStart(site, 'A level survey')
  await page.locator('#levels-file').setInputFiles(join(files, 'points-27700.geojson'))
  await page.getByText(/That puts its middle at/).waitFor()
  await page.getByText('Taken from the coordinates of the file.').waitFor()
  assert.notEqual(await page.getByLabel('Latitude, north positive').inputValue(), '')
  await page.locator('#levels-file').setInputFiles(join(files, 'dxf-metres-r2018.dxf'))
  await page.getByText('It names no coordinate system.').waitFor()
  await page.getByText(/Still to say: .*where on the globe it lies/).waitFor()
  assert.equal(await page.getByLabel('Latitude, north positive').inputValue(), '')
})

test('pasted lines with a bad one are mended in the page, and nothing is kept before', async (site) => {
  const page = await openStart(site, 'A level survey', phone)
  const rows = ['mark,east,north,level']
  for (let east = 0; east <= 12; east += 3)
    for (let north = 0; north <= 18; north += 3)
      rows.push(`P${rows.length},${east},${north},${(100 + 0.3 * north + 0.02 * east).toFixed(2)}`)
  await page.getByLabel('or paste the lines').fill([...rows, 'P99,1,2,high'].join('\n'))
  await button(page, 'Read these lines').click()
  await page.locator('.problems', { hasText: 'line 37, level' }).waitFor()
  await button(page, 'Leave line 37 out and read the rest').click()
  await page.locator('.survey-parts', { hasText: '35 points' }).waitFor()
  await page.getByText('Left out because you said so: line 37.').waitFor()
  await page.getByLabel('Lengths are in').selectOption('m')
  assert.ok(await button(page, 'Keep this survey').isDisabled())
  await page.getByLabel('or near').selectOption({ index: 1 })
  await clean(page, 'pasted lines')
  await button(page, 'Keep this survey').click()
  await settled(page)
})

test('a compass bearing is corrected for place and day, and kept', async (site) => {
  const page = await openStart(site, 'A bank in four numbers')
  await page.getByLabel('Latitude, north positive').fill('43')
  await page.getByLabel('Longitude, east positive').fill('-93')
  await page.getByLabel('Longitude, east positive').press('Tab')
  await page.getByLabel('The way it faces, in degrees').fill('200')
  await page.getByLabel('by compass').check()
  await page.getByLabel('Day it was read').fill('2025-06-01')
  await page.locator('.compass-words', { hasText: /reads \d\.\d degrees too (low|high) here/ }).waitFor()
  await clean(page, 'a compass')
  await button(page, 'Show me my bank').click()
  await settled(page)
  const { survey } = await savedPlan(page)
  const { magneticDeg, declinationDeg, on, model } = survey.compass
  assert.deepEqual([magneticDeg, on, model], [200, '2025-06-01', 'WMM2025'])
  assert.ok(Math.abs(survey.ground.facesDeg - (200 + declinationDeg)) <= 0.05)
  assert.equal(survey.accuracy.methodId, 'string-level')
})

test('a large steep bank is advised to be surveyed', async (site) => {
  const page = await openStart(site, 'A bank in four numbers')
  await page.getByLabel('Length down the slope, in m').fill('40')
  await page.getByLabel('Rise, in m').fill('16')
  await page.getByLabel('Width along the bank, in m').fill('60')
  await page.locator('.advice', { hasText: 'steep and large at once' }).waitFor()
  await clean(page, 'advice')
})

test('better levels for a plot are seen on the desk before they are taken', async (site) => {
  const page = await newPage(site, { reducedMotion: 'reduce' })
  await page.goto(`${site.url}?demo=bank-below-the-house`)
  await settled(page)
  await page.locator('.margin').getByRole('button', { name: 'Levels', exact: true }).click()
  await page.getByText('Better levels from a survey').click()
  await page.locator('#new-levels-paste').fill('0 0 10\n12 0 10.2\n0 9 13\n12 9 13.1\n6 4 11.2')
  await page.locator('.new-levels').getByRole('button', { name: 'Read these lines' }).click()
  await page.locator('.doubt', { hasText: 'No heading says' }).waitFor()
  assert.ok(await button(page, 'Take these levels').isDisabled())
  await page.getByLabel('The columns are right as they stand').check()
  await page.locator('#new-levels-unit').selectOption('m')
  await clean(page, 'better levels')
  await button(page, 'Take these levels').click()
  await page.getByRole('button', { name: 'Undo: take better levels' }).waitFor()
  await page
    .getByLabel('Level of point 1, in metres')
    .or(page.locator('.edit-table input').first())
    .first()
    .waitFor()
})
