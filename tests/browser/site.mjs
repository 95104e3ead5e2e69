// The built app in a real browser: server, pages that report every fault, axe.
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import axe from 'axe-core'
import { chromium } from 'playwright-core'
import { preview } from 'vite'
import { findBrowser, FLAGS } from '../../scripts/browser.mjs'

export const root = join(dirname(fileURLToPath(import.meta.url)), '../..')
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']

/** Serves dist/ and starts a browser; `faults` collects every error and every request that leaves the origin. */
export async function openSite() {
  const found = await findBrowser()
  if (!found) throw new Error('No Chromium was found or could be installed. Set CHROME_PATH.')
  const server = await preview({
    configFile: join(root, 'vite.config.ts'),
    preview: { port: 0, host: '127.0.0.1', strictPort: false, open: false },
    logLevel: 'warn',
  })
  const browser = await chromium.launch({ executablePath: found.path, args: FLAGS })
  const url = server.resolvedUrls.local[0]
  const faults = []
  return { url, browser, faults, server, close: async () => (await browser.close(), await server.close()) }
}

/** A page of its own, with its own storage. */
export async function newPage({ browser, url, faults }, options = {}) {
  const context = await browser.newContext({
    viewport: { width: 1440, height: 900 },
    locale: 'en-GB',
    acceptDownloads: true,
    ...options,
  })
  const page = await context.newPage()
  page.on('pageerror', (error) => faults.push(`page error: ${error.message}`))
  page.on('console', (message) => message.type() === 'error' && faults.push(`console: ${message.text()}`))
  page.on('request', (request) => {
    const address = request.url()
    if (!address.startsWith(url) && !/^(blob|data|about):/.test(address))
      faults.push(`left the origin: ${address}`)
  })
  return page
}

/** Waits until the sheet stands and nothing is being worked out. */
export async function settled(page) {
  await page.locator('.margin').waitFor({ timeout: 60_000 })
  await page.waitForFunction(
    () => !document.querySelector('.sheet')?.matches('[aria-busy="true"]'),
    undefined,
    {
      timeout: 60_000,
    },
  )
}

/** Rules of WCAG 2.2 AA and best practice that the page breaks, each with the first place. */
export async function axeFaults(page) {
  await page.evaluate(axe.source)
  return page.evaluate(async (rules) => {
    const { violations } = await globalThis.axe.run(document, { runOnly: rules })
    return violations.map(
      ({ id, nodes }) => `${id} (${nodes.length}): ${nodes[0]?.target} ${nodes[0]?.failureSummary}`,
    )
  }, RULES)
}

/** How far the page is wider than its window [px]; 0 when it does not scroll sideways. */
export const overflowPx = (page) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)
