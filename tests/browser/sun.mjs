// Who gets the sun: shadows scrubbed and played, the sky from one place, by mouse, touch and keyboard.
import assert from 'node:assert/strict'
import { axeFaults, newPage, overflowPx, settled } from './site.mjs'

const garden = 'garden-falling-to-the-house'
const button = (page, name) => page.getByRole('button', { name, exact: true })
const day = (page) => page.getByLabel('Day', { exact: true })
const time = (page) => page.getByLabel('Time', { exact: true })
const litWords = (page) => page.locator('.lit-words b')

async function openSun(site, options) {
  const page = await newPage(site, options)
  await page.goto(`${site.url}?demo=${garden}`)
  await settled(page)
  await button(page, 'Who gets the sun?').click()
  await page.locator('.shadow-plan canvas').first().waitFor()
  return page
}

/** Square metres in the sun, as they are written. */
async function sunM2(page) {
  const [, area] = /^([\d,]+) m² of 786 m² in the sun$/.exec(await litWords(page).innerText()) ?? []
  assert.ok(area, await litWords(page).innerText())
  return Number(area.replace(',', ''))
}

/** Share of a canvas’s plot that is painted as in shade. */
const shadeShare = (canvas) =>
  canvas.evaluate((node) => {
    const { data } = node.getContext('2d').getImageData(0, 0, node.width, node.height)
    let [plot, dark] = [0, 0]
    for (let at = 0; at < data.length; at += 4) {
      if (data[at + 3] === 0) continue
      plot += 1
      if (data[at] < 80) dark += 1
    }
    return dark / plot
  })

/** Sets the day by its named button and the time in minutes by the sun. */
async function turnTo(page, name, minutes) {
  await button(page, name).click()
  await time(page).fill(String(minutes))
}

export const sunTests = []
const test = (name, run) => sunTests.push({ name, run })

test('shadows follow the sliders: long at midwinter, short at midsummer noon, and the sliders say so', async (site) => {
  const page = await openSun(site)
  await turnTo(page, 'midsummer', 720)
  assert.equal(await day(page).getAttribute('aria-valuetext'), '21 June')
  assert.match(await time(page).getAttribute('aria-valuetext'), /^12:00 by the sun/)
  const summer = await sunM2(page)
  const canvas = page.locator('#shadows .shadow-plan canvas')
  const summerShade = await shadeShare(canvas)
  await turnTo(page, 'midwinter', 720)
  assert.equal(await day(page).getAttribute('aria-valuetext'), '21 December')
  const winter = await sunM2(page)
  assert.ok(winter < summer, `in the sun ${winter} m² at midwinter, ${summer} m² at midsummer`)
  assert.ok((await shadeShare(canvas)) > summerShade, 'the picture has more shade at midwinter')
  await page.locator('[aria-live=polite]', { hasText: /in the sun, 21 December, 12:00 by the sun/ }).waitFor()
})

test('the day plays to sunset and stops, and can be paused', async (site) => {
  const page = await openSun(site)
  await turnTo(page, 'September equinox', 600)
  await button(page, 'Play the day').click()
  await button(page, 'Pause').click()
  const paused = Number(await time(page).inputValue())
  assert.ok(paused >= 600 && paused < 1000, `paused at ${paused} min`)
  await page.waitForTimeout(300)
  assert.equal(Number(await time(page).inputValue()), paused)
  await time(page).fill('1020')
  await button(page, 'Play the day').click()
  await button(page, 'Play the day from sunrise').waitFor({ timeout: 10_000 })
  assert.equal(await time(page).inputValue(), await time(page).getAttribute('max'))
})

test('under reduced motion the day goes on by the hour', async (site) => {
  const page = await openSun(site, { reducedMotion: 'reduce' })
  await turnTo(page, 'September equinox', 600)
  await button(page, 'An hour on').click()
  assert.equal(await time(page).inputValue(), '660')
  assert.equal(await button(page, 'Play the day').count(), 0)
})

test('a touch of the plan or of the section shows the sky from there, with its hours and its winter', async (site) => {
  const page = await openSun(site)
  await turnTo(page, 'midsummer', 720)
  const plan = page.locator('#shadows .shadow-plan > button')
  await plan.scrollIntoViewIfNeeded()
  const box = await plan.boundingBox()
  await plan.click({ position: { x: box.width * 0.46, y: box.height * 0.5 } })
  const place = page.locator('.sun-place')
  await place.locator('tr', { hasText: /midsummer, 21 June\s*\d+\.\d\sh/ }).waitFor()
  await place.locator('svg').first().waitFor()
  const north = await page.getByLabel('Place: north', { exact: true }).inputValue()
  const section = page.locator('.section-figure')
  await section.scrollIntoViewIfNeeded()
  const ground = await section.boundingBox()
  await section.click({ position: { x: ground.width * 0.75, y: ground.height * 0.8 } })
  await page.waitForFunction((before) => document.querySelector('#sun-place-northM').value !== before, north)
  await page.getByLabel('Place: north', { exact: true }).fill('500')
  await page.getByLabel('Place: north', { exact: true }).press('Tab')
  await place.getByText('That place is off the plot.').waitFor()
})

test('on the large plan shadows lie under the lines, and a touch picks the place', async (site) => {
  const page = await openSun(site)
  await button(page, 'Show the plan large').first().click()
  const canvas = page.locator('.plan-map canvas.map-light')
  await canvas.waitFor({ state: 'attached' })
  await turnTo(page, 'midwinter', 720)
  const winter = await shadeShare(canvas)
  await turnTo(page, 'midsummer', 720)
  assert.ok((await shadeShare(canvas)) < winter)
  const map = page.locator('.plan-map')
  await map.scrollIntoViewIfNeeded()
  const box = await map.boundingBox()
  await page.mouse.click(box.x + box.width * 0.5, box.y + box.height * 0.35)
  await page.locator('path.map-place').waitFor()
  await page.locator('.sun-place svg').first().waitFor()
  assert.deepEqual(await axeFaults(page), [])
  await button(page, 'What may I mow?').click()
  await canvas.waitFor({ state: 'detached' })
})

test('the sun is asked from the keyboard alone', async (site) => {
  const page = await newPage(site)
  await page.goto(`${site.url}?demo=${garden}`)
  await settled(page)
  await page.keyboard.press('3')
  await day(page).focus()
  const before = Number(await day(page).inputValue())
  await page.keyboard.press('ArrowRight')
  assert.equal(Number(await day(page).inputValue()), before + 1)
  await page.keyboard.press('PageDown')
  const back = Number(await day(page).inputValue())
  assert.ok(before - back >= 26 && before - back <= 31, `a month back is ${before - back} days`)
  await time(page).focus()
  const minutes = Number(await time(page).inputValue())
  await page.keyboard.press('ArrowLeft')
  assert.equal(Number(await time(page).inputValue()), minutes - 10)
  await page.getByLabel('Place: east', { exact: true }).fill('8')
  await page.getByLabel('Place: east', { exact: true }).press('Enter')
  await page.getByLabel('Place: north', { exact: true }).fill('20')
  await page.getByLabel('Place: north', { exact: true }).press('Enter')
  await page.locator('.sun-place svg').first().waitFor()
  await page.locator('#shadows .shadow-plan > button').focus()
  await page.keyboard.press('ArrowRight')
  await page.keyboard.press('Shift+ArrowDown')
  assert.equal(await page.getByLabel('Place: east', { exact: true }).inputValue(), '8.5')
  assert.equal(await page.getByLabel('Place: north', { exact: true }).inputValue(), '15')
  await page.locator('summary', { hasText: 'This day hour by hour' }).press('Enter')
  await page.locator('.lit-hours tbody tr').first().waitFor()
})

for (const options of [
  { viewport: { width: 1440, height: 900 }, colorScheme: 'light' },
  { viewport: { width: 768, height: 1024 }, colorScheme: 'dark' },
  { viewport: { width: 360, height: 740 }, colorScheme: 'light', hasTouch: true },
])
  test(`axe finds nothing under the sun at ${options.viewport.width} px, ${options.colorScheme}, and nothing scrolls sideways`, async (site) => {
    const page = await openSun(site, { reducedMotion: 'reduce', ...options })
    await turnTo(page, 'March equinox', 720)
    const plan = page.locator('#shadows .shadow-plan > button')
    await plan.scrollIntoViewIfNeeded()
    const box = await plan.boundingBox()
    await plan.click({ position: { x: box.width * 0.46, y: box.height * 0.5 } })
    await page.locator('.sun-place svg').first().waitFor()
    await page.locator('summary', { hasText: 'This day hour by hour' }).click()
    await page.locator('.lit-hours tbody tr').first().waitFor()
    assert.equal(await overflowPx(page), 0)
    assert.deepEqual(await axeFaults(page), [])
    const small = await page
      .locator('#shadows')
      .evaluate((section) =>
        [...section.querySelectorAll('button, input, summary')]
          .filter((each) => each.getBoundingClientRect().height < 44)
          .map((each) => each.textContent || each.id),
      )
    if (options.viewport.width < 900) assert.deepEqual(small, [], 'touch targets of 44 px')
  })

test('the plan is shaded by the sun of a month, and the shadows of the moment come back', async (site) => {
  const page = await openSun(site, { reducedMotion: 'reduce' })
  await button(page, 'Show the plan large').first().click()
  await page.locator('.plan-map canvas.map-light').waitFor({ state: 'attached' })
  await page.getByLabel('Shade the plan by').selectOption('sun-month')
  await page.locator('.plan-map canvas.map-light').waitFor({ state: 'detached' })
  await page.locator('.plan-readings .month-picker label', { hasText: 'Dec' }).click()
  await page.locator('.shade-key caption', { hasText: 'direct sun on a clear day in December' }).waitFor()
  assert.match(await day(page).getAttribute('aria-valuetext'), / December$/)
  assert.deepEqual(await axeFaults(page), [])
  await page.getByLabel('Shade the plan by').selectOption('')
  await page.locator('.plan-map canvas.map-light').waitFor({ state: 'attached' })
})

test('as tables the sun is told hour by hour, and a change is tried in the field book', async (site) => {
  const page = await openSun(site, { reducedMotion: 'reduce' })
  await button(page, 'Tables').click()
  await page.locator('.lit-hours tbody tr').first().waitFor()
  await page.locator('caption', { hasText: /^Share of A .* in the sun, hour by hour$/ }).waitFor()
  await page.locator('caption', { hasText: /^What becomes of the sun on A / }).waitFor()
  assert.equal(await overflowPx(page), 0)
  assert.deepEqual(await axeFaults(page), [])
  await button(page, 'Try a change').last().click()
  await page.locator('.desk-head [aria-current]', { hasText: 'Try a change' }).waitFor()
})
