// End-to-end tests of the built app. Prints "N passed, N failed" and exits with 1 when one failed.
import assert from 'node:assert/strict'
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { axeFaults, newPage, openSite, overflowPx, root, settled } from './site.mjs'
import { standingTests } from './standing.mjs'
import { startTests } from './starts.mjs'
import { sunTests } from './sun.mjs'
import { surveyTests } from './survey.mjs'

if (!existsSync(join(root, 'dist/index.html'))) {
  console.error('dist/ is not built. Run: npm run build')
  process.exit(1)
}

const questions = [
  'What is this ground?',
  'Where does the water go?',
  'Who gets the sun?',
  'What may I mow?',
  'What holds this bank?',
  'What happens this month?',
  'What do I hand over?',
]
const demos = ['bank-below-the-house', 'garden-falling-to-the-house', 'three-banks-below-the-ground']
const widths = [
  { width: 1440, height: 900 },
  { width: 360, height: 740 },
]
const tests = []
const test = (name, run) => tests.push({ name, run })
const ask = (page, question) => page.getByRole('button', { name: question, exact: true }).click()
const button = (page, name) => page.getByRole('button', { name, exact: true })

/** From a plan on the sheet to the year as pages. */
async function toPrintedCalendar(page) {
  await settled(page)
  await ask(page, 'What happens this month?')
  await page.locator('.year-figure svg').first().waitFor()
  assert.match(await page.locator('.answer .says').innerText(), /asks for/)
  const pdf = await page.pdf({ format: 'A4', landscape: true, printBackground: true, tagged: true })
  assert.equal(pdf.subarray(0, 5).toString(), '%PDF-')
  assert.ok(pdf.length > 10_000, `the printed year has ${pdf.length} bytes`)
  await ask(page, 'What do I hand over?')
  const waiting = page.waitForEvent('download')
  await page.getByRole('button', { name: /^Calendar from/ }).click()
  const calendar = readFileSync(await (await waiting).path(), 'utf8')
  assert.match(calendar, /^BEGIN:VCALENDAR\r\n/)
  assert.match(calendar, /BEGIN:VEVENT/)
}

test('a bank in four numbers, from the tape to a printed calendar', async (site) => {
  const page = await newPage(site)
  await page.goto(site.url)
  await page.getByLabel('Length down the slope, in m').fill('9.5')
  await page.getByLabel('Rise, in m').fill('3.1')
  await page.getByLabel('Width along the bank, in m').fill('14')
  await page.getByLabel('or near').selectOption({ index: 1 })
  assert.match(await page.locator('.tells').innerText(), /19\.0°/)
  await button(page, 'Show me my bank').click()
  await toPrintedCalendar(page)
})

test('a rise given as 1 in 3 draws the same bank as in metres', async (site) => {
  const page = await newPage(site)
  await page.goto(site.url)
  await page.getByLabel('Length down the slope, in m').fill('10')
  await page.getByLabel('How the rise is given').selectOption('ratio')
  await page.getByLabel(/^Rise, in/).fill('3')
  assert.match(await page.locator('.tells').innerText(), /18\.4°: a metre up for every 3\.0 along/)
  await page.getByLabel('How the rise is given').selectOption('metres')
  assert.equal(await page.getByLabel('Rise, in m').inputValue(), '3.16')
})

test('a profile, pasted, from the level to a printed calendar', async (site) => {
  const page = await newPage(site)
  await page.goto(site.url)
  await button(page, 'A profile down the slope').click()
  await page.getByLabel('Paste distance and level, one pair a line').fill('0 10\n4 9.2\n8 6.9\n12 5.6\n16 x')
  await button(page, 'Read these lines').click()
  assert.match(await page.locator('.problems').innerText(), /line 5, level.*“x” is not a number/)
  await page
    .getByLabel('Paste distance and level, one pair a line')
    .fill('0 10\n4 9.2\n8 6.9\n12 5.6\n16 5.2')
  await button(page, 'Read these lines').click()
  assert.equal(await page.getByLabel('Level of station 5, in metres').inputValue(), '5.2')
  await button(page, 'Show me my bank').click()
  await toPrintedCalendar(page)
})

test('spot levels, pasted, from a survey to a printed calendar', async (site) => {
  const page = await newPage(site)
  await page.goto(site.url)
  await button(page, 'A level survey').click()
  const rows = ['mark,east (m),north (m),level (m)']
  for (let east = 0; east <= 12; east += 3)
    for (let north = 0; north <= 18; north += 3)
      rows.push(`P${rows.length},${east},${north},${(100 + 0.3 * north + 0.02 * east).toFixed(2)}`)
  await page.getByLabel('or paste the lines').fill(rows.join('\n'))
  await button(page, 'Read these lines').click()
  await page.locator('.survey-parts', { hasText: '35 points' }).waitFor()
  await page.getByLabel('or near').selectOption({ index: 1 })
  await button(page, 'Keep this survey').click()
  await toPrintedCalendar(page)
})

for (const demo of demos)
  for (const viewport of widths)
    test(`${demo} answers all seven questions at ${viewport.width} px, and axe finds nothing`, async (site) => {
      const page = await newPage(site, { viewport, reducedMotion: 'reduce' })
      await page.goto(`${site.url}?demo=${demo}`)
      await settled(page)
      for (const question of questions) {
        await ask(page, question)
        assert.equal(await page.locator('h1').innerText(), question)
        assert.ok((await page.locator('.answer .says').innerText()).length > 20, `${question} is answered`)
        if (question === 'What do I hand over?') await page.locator('iframe').waitFor()
        assert.equal(await overflowPx(page), 0, `${question} scrolls sideways`)
        assert.deepEqual(await axeFaults(page), [], question)
      }
    })

for (const width of [320, 768])
  test(`nothing scrolls sideways at ${width} px`, async (site) => {
    const page = await newPage(site, { viewport: { width, height: 740 } })
    await page.goto(site.url)
    for (const way of ['A bank in four numbers', 'A profile down the slope', 'A level survey']) {
      await button(page, way).click()
      assert.equal(await overflowPx(page), 0, way)
    }
    await page.goto(`${site.url}?demo=${demos[1]}`)
    await settled(page)
    for (const question of questions) {
      await ask(page, question)
      assert.equal(await overflowPx(page), 0, question)
    }
  })

test('axe finds nothing on the three starts', async (site) => {
  const page = await newPage(site)
  await page.goto(site.url)
  for (const way of ['A bank in four numbers', 'A profile down the slope', 'A level survey']) {
    await button(page, way).click()
    assert.deepEqual(await axeFaults(page), [], way)
  }
})

test('axe finds nothing in the field book, the plan, the tables, and a level book, light and dark', async (site) => {
  for (const colorScheme of ['light', 'dark']) {
    const page = await newPage(site, { colorScheme })
    await page.goto(`${site.url}?demo=${demos[0]}`)
    await settled(page)
    const pages = [
      'Levels',
      'Lines',
      'Outline and holes',
      'Sections',
      'Around the plot',
      'Far hills',
      'Try a change',
      'Accuracy',
      'Backdrop',
      'Soil',
      'Climate',
      'Place',
      'People and machines',
      'Zones',
    ]
    await page.locator('.margin').getByRole('button', { name: 'Levels', exact: true }).click()
    for (const name of pages) {
      await page.locator('.desk-head').getByRole('button', { name, exact: true }).click()
      assert.deepEqual(await axeFaults(page), [], `${name}, ${colorScheme}`)
    }
    await button(page, 'Close the field book').click()
    await page.keyboard.press('c')
    await page.keyboard.press('w')
    assert.deepEqual(await axeFaults(page), [], `level book, ${colorScheme}`)
    await page.keyboard.press('Escape')
    await button(page, 'Show the plan large').click()
    assert.deepEqual(await axeFaults(page), [], `plan, ${colorScheme}`)
    await button(page, 'Back to the section').click()
    await button(page, 'Tables').click()
    assert.deepEqual(await axeFaults(page), [], `tables, ${colorScheme}`)
    await page.context().close()
  }
})

test('everything is reached from the keyboard alone', async (site) => {
  const page = await newPage(site)
  await page.goto(site.url)
  await tabTo(page, /^Show me my bank$/)
  await page.keyboard.press('Enter')
  await settled(page)
  await page.keyboard.press('4')
  assert.equal(await page.locator('h1').innerText(), 'What may I mow?')
  await page.keyboard.press('ArrowRight')
  await page.keyboard.press('Shift+ArrowRight')
  await page.keyboard.press('ArrowLeft')
  const said = page.locator('[aria-live=polite]', { hasText: 'from the top edge' })
  assert.match(await said.innerText(), /m from the top edge, \d+°/)
  await page.keyboard.press('a')
  await page.keyboard.press('w')
  await page.locator('.why-book').waitFor()
  await page.keyboard.press('Escape')
  await page.locator('.why-book').waitFor({ state: 'detached' })
  await page.keyboard.press('1')
  await tabTo(page, /^Soil$/)
  await page.keyboard.press('Enter')
  await page.locator('.desk').waitFor()
  await tabTo(page, /in a jar/)
  await page.keyboard.press('ArrowRight')
  await page.keyboard.press('Escape')
})

/** Presses Tab until something with this name has the focus. */
async function tabTo(page, name) {
  for (let press = 0; press < 200; press++) {
    await page.keyboard.press('Tab')
    const focused = await page.evaluate(() => {
      const at = document.activeElement
      return (
        at?.getAttribute('aria-label') ??
        at?.closest('label')?.textContent?.trim() ??
        at?.textContent?.trim() ??
        ''
      )
    })
    if (name.test(focused)) return
  }
  assert.fail(`${name} cannot be reached with Tab`)
}

test('an edit can be undone and redone by name, and a reload keeps it', async (site) => {
  const page = await newPage(site)
  await page.goto(`${site.url}?demo=${demos[0]}`)
  await settled(page)
  await page.locator('.margin').getByRole('button', { name: 'Zones', exact: true }).click()
  const name = page.locator('.desk input[maxlength="60"]').first()
  const before = await name.inputValue()
  await name.fill('Behind the shed')
  await name.press('Tab')
  await page.locator('.desk legend', { hasText: 'Behind the shed' }).waitFor()
  await page.getByRole('button', { name: /^Undo: rename/ }).click()
  await page.locator('.desk legend', { hasText: before }).waitFor()
  await page.getByRole('button', { name: /^Redo: rename/ }).click()
  await page.locator('.desk legend', { hasText: 'Behind the shed' }).waitFor()
  await page.getByText(/^Kept on this device, \d\d:\d\d$/).waitFor()
  await page.goto(site.url)
  await settled(page)
  await page.locator('.margin').getByRole('button', { name: 'Zones', exact: true }).click()
  await page.locator('.desk legend', { hasText: 'Behind the shed' }).waitFor()
})

test('a plan that makes way for another is kept, and opens again', async (site) => {
  const page = await newPage(site)
  await page.goto(site.url)
  await page.getByLabel('What you call it').fill('My own bank')
  await button(page, 'Show me my bank').click()
  await settled(page)
  await page.getByText(/^Kept on this device, \d\d:\d\d$/).waitFor()
  await page.goto(`${site.url}?demo=${demos[0]}`)
  await settled(page)
  await button(page, 'New').click()
  await button(page, 'My own bank').click()
  await settled(page)
  assert.equal(await page.locator('.plan-name').innerText(), 'My own bank')
})

test('a bank grows into a profile, and a station makes it steeper', async (site) => {
  const page = await newPage(site)
  await page.goto(site.url)
  await button(page, 'Show me my bank').click()
  await settled(page)
  await page.locator('.margin').getByRole('button', { name: 'Levels', exact: true }).click()
  await button(page, 'Measure more levels down the slope').click()
  await button(page, 'Add a station').click()
  const last = page.getByLabel('Level of station 3, in metres')
  await last.fill('-1.6')
  await last.press('Tab')
  await page.getByRole('button', { name: 'Undo: change the levels' }).waitFor()
  await page.locator('.answer .says', { hasText: '4.0 m' }).waitFor()
})

test('a zone is split, joined and taken out by figures; what cannot be is refused in words', async (site) => {
  const page = await newPage(site)
  await page.goto(`${site.url}?demo=${demos[0]}`)
  await settled(page)
  await page.locator('.margin').getByRole('button', { name: 'Zones', exact: true }).click()
  const zones = page.locator('.desk fieldset.sample')
  await zones.first().waitFor()
  const count = await zones.count()
  await zones
    .first()
    .getByText(/^Split .* by a line$/)
    .click()
  await zones.first().getByRole('button', { name: 'Split it here' }).click()
  await page.getByRole('button', { name: /^Undo: split/ }).waitFor()
  await page.waitForFunction(
    (n) => document.querySelectorAll('.desk fieldset.sample').length === n,
    count + 1,
  )
  await zones.nth(0).getByLabel(/join/).check()
  await zones.nth(count).getByLabel(/join/).check()
  await button(page, 'Join the ticked zones').click()
  await page.getByText('These zones do not join into one outline').waitFor()
})

test('a cover and a score of one’s own are kept with their reason', async (site) => {
  const page = await newPage(site)
  await page.goto(`${site.url}?demo=${demos[0]}`)
  await settled(page)
  await page.keyboard.press('4')
  await page.keyboard.press('b')
  await page.locator('.cover-choices label', { hasText: 'Meadow' }).click()
  await page.getByRole('button', { name: /^Undo: B: set to meadow/ }).waitFor()
  await button(page, 'Take the suggestion again').waitFor()
  await page.keyboard.press('1')
  await page.getByRole('button', { name: /^Wetness/ }).click()
  await page.getByLabel('Your score, 0 to 100').fill('12')
  await button(page, 'Use my score').click()
  await page.getByText('Say in a few words why you know better.').waitFor()
  await page.getByLabel('Because', { exact: true }).fill('It is the driest spot every summer')
  await button(page, 'Use my score').click()
  await page.getByText('12 is yours').waitFor()
  await page.getByRole('button', { name: /^Undo: set wetness of B to 12/ }).waitFor()
})

test('a saved copy opens again as the same plan', async (site) => {
  const page = await newPage(site)
  await page.goto(`${site.url}?demo=${demos[2]}`)
  await settled(page)
  const waiting = page.waitForEvent('download')
  await button(page, 'Save a copy').click()
  const copy = await waiting
  assert.match(copy.suggestedFilename(), /\.lynchet\.json$/)
  const file = await copy.path()
  const chooser = page.waitForEvent('filechooser')
  await button(page, 'Open').click()
  await (
    await chooser
  ).setFiles({
    name: 'copy.lynchet.json',
    mimeType: 'application/json',
    buffer: Buffer.from(
      readFileSync(file, 'utf8').replace('"name": "Three banks', '"name": "Copy of three banks'),
    ),
  })
  await page.locator('.plan-name', { hasText: 'Copy of three banks' }).waitFor()
  const bad = page.waitForEvent('filechooser')
  await button(page, 'Open').click()
  await (
    await bad
  ).setFiles({ name: 'bad.json', mimeType: 'application/json', buffer: Buffer.from('{"a": 1') })
  await page.getByText('The file is not readable as JSON').waitFor()
  assert.match(await page.locator('.plan-name').innerText(), /Copy of three banks/)
})

test('a figure that cannot stand is refused, and the plan stays as it was', async (site) => {
  const page = await newPage(site)
  await page.goto(`${site.url}?demo=${demos[0]}`)
  await settled(page)
  await page.locator('.margin').getByRole('button', { name: 'Levels', exact: true }).click()
  const second = page.getByLabel('Distance of station 2, in metres')
  await second.fill('-5')
  await second.press('Tab')
  await page.getByText('does not go on from').waitFor()
  assert.ok(await button(page, 'Undo').isDisabled())
})

test('with no network the app opens again and answers', async (site) => {
  const page = await newPage(site)
  await page.goto(`${site.url}?demo=${demos[0]}`)
  await settled(page)
  await page.evaluate(async () => (await navigator.serviceWorker.ready).active?.state)
  await page.waitForTimeout(500)
  await page.reload()
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null)
  await page.context().setOffline(true)
  await page.goto(site.url)
  await settled(page)
  await ask(page, 'Where does the water go?')
  assert.match(await page.locator('.answer .says').innerText(), /rain a year/)
})

tests.push(...startTests, ...surveyTests, ...sunTests, ...standingTests)

const site = await openSite()
let [passed, failed] = [0, 0]
for (const { name, run } of tests) {
  if (process.argv[2] && !name.includes(process.argv[2])) continue
  site.faults.length = 0
  const started = Date.now()
  try {
    await run(site)
    assert.deepEqual([...site.faults], [], 'faults while it ran')
    passed++
    console.log(`passed  ${name} (${Date.now() - started} ms)`)
  } catch (error) {
    failed++
    console.log(`FAILED  ${name}\n        ${String(error.message ?? error).replaceAll('\n', '\n        ')}`)
  }
  for (const context of site.browser.contexts()) await context.close()
}
await site.close()
console.log(`${passed} passed, ${failed} failed`)
process.exit(failed > 0 ? 1 : 0)
