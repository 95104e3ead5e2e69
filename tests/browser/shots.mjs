// Pictures of the three demos for the documentation, into docs/pictures/.
import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import { newPage, openSite, root, settled } from './site.mjs'

const folder = join(root, 'docs/pictures')
const demos = {
  bank: 'bank-below-the-house',
  garden: 'garden-falling-to-the-house',
  planner: 'three-banks-below-the-ground',
}
/** Name of the picture, which demo, and what is done before it is taken. */
const shots = [
  { name: 'bank-mow', demo: 'bank', question: '4' },
  { name: 'bank-water', demo: 'bank', question: '2' },
  { name: 'bank-holds', demo: 'bank', question: '5' },
  { name: 'bank-why', demo: 'bank', question: '1', then: ['d', 'w'] },
  { name: 'bank-dark', demo: 'bank', question: '4', options: { colorScheme: 'dark' } },
  {
    name: 'bank-phone',
    demo: 'bank',
    question: '4',
    options: { viewport: { width: 360, height: 740 }, deviceScaleFactor: 2 },
  },
  { name: 'garden-sun', demo: 'garden', question: '3' },
  { name: 'garden-ground', demo: 'garden', question: '1' },
  { name: 'planner-month', demo: 'planner', question: '6' },
  { name: 'planner-mow', demo: 'planner', question: '4' },
]

mkdirSync(folder, { recursive: true })
const site = await openSite()
const start = await newPage(site)
await start.goto(site.url)
await start.locator('.oblique').waitFor()
await start.screenshot({ path: join(folder, 'start.png'), fullPage: true })
for (const { name, demo, question, then = [], options = {} } of shots) {
  const page = await newPage(site, { reducedMotion: 'reduce', ...options })
  await page.goto(`${site.url}?demo=${demos[demo]}`)
  await settled(page)
  for (const key of [question, ...then]) await page.keyboard.press(key)
  await page.waitForTimeout(400)
  await page.screenshot({ path: join(folder, `${name}.png`) })
  await page.context().close()
  console.log(`docs/pictures/${name}.png`)
}
await site.close()
