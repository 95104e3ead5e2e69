import { describe, expect, it } from 'vitest'
import { reportHtml } from '#report'
import { demos } from '../../src/io/demos'
import { loadShadeTables } from '../../src/io/shade-tables'
import { loadSources } from '../../src/io/source-table'
import { assessed } from '../io/assessed'

/** The words of a page as a reader sees them. */
function wordsOf(html: string): string {
  return html
    .replace(/<(style|svg)[\s\S]*?<\/\1>/g, ' ')
    .replace(/<[^>]+>/g, ' ')
    .replaceAll('&amp;', '&')
    .replaceAll('&#39;', '’')
    .replaceAll("'", '’')
    .replace(/\s+/g, ' ')
}

describe.each(demos)('report of $id', async ({ text }) => {
  const { plan, findings } = assessed(text)
  const tables = { shade: loadShadeTables(), sources: loadSources() }
  const html = await reportHtml(plan, findings, tables)
  const words = wordsOf(html)

  it('shows every zone, every planted plant with what is poisonous, every danger and caution', () => {
    const said = (sentence: string) =>
      expect(words).toContain(sentence.replaceAll("'", '’').replace(/\s+/g, ' '))
    findings.zoning.zones.forEach(({ letter, name }) => said(`${letter} ${name}`))
    findings.toSettle.forEach(({ what, mend }) => [what, mend].forEach(said))
    findings.cautions.forEach((caution) => said(caution.text))
    for (const { planting } of findings.zones)
      for (const { plantId } of planting.mix) {
        const verdict = [...planting.offered, ...planting.refused].find(({ plant }) => plant.id === plantId)
        said(verdict?.plant.name ?? 'a plant of the mix must have been weighed')
        const poison =
          verdict?.reasons.filter(({ id }) => ['poisonous', 'skin', 'animals'].includes(id)) ?? []
        poison.forEach(({ because }) => said(because))
      }
  })

  it('shows the level book behind every score, line by line, and says that each books out', () => {
    for (const { scores } of findings.zones)
      for (const { account } of Object.values(scores))
        for (const { because } of account.lines) expect(words).toContain(because.replaceAll("'", '’').trim())
    expect(words).not.toContain('does not book out')
  })

  it('says the whole citation of every source that a score, a cover or a job names', () => {
    const named = [
      ...findings.zones.flatMap(({ scores }) =>
        Object.values(scores).flatMap(({ account }) => account.lines),
      ),
      ...findings.care.zones.flatMap(({ jobs }) => jobs),
    ]
    const sources = loadSources()
    for (const { source } of named)
      expect(words).toContain(sources[source]?.cite.replaceAll("'", '’').replace(/\s+/g, ' '))
  })

  it('tells the sun of every zone, what every trial changes, what the classes of light mean, and what to ask first', () => {
    for (const { because } of tables.shade.lightClasses) expect(words).toContain(because.replaceAll("'", '’'))
    for (const { sunHours } of findings.zoneSun) expect(words).toContain(`${sunHours[5].toFixed(1)} h`)
    for (const trial of findings.trials)
      for (const said of [trial.name, ...trial.changes]) expect(words).toContain(said.replaceAll("'", '’'))
    if (findings.trials.length > 0)
      expect(words).toMatch(
        /It may be protected, and birds may be nesting in it: ask the local authority first/,
      )
    expect(html).not.toMatch(/NaN|Infinity/)
  })

  it('is small enough to send by post: under 1.5 MB', () => {
    expect(html.length).toBeLessThan(1.5e6)
  })

  it('stands alone and comes out the same again', { timeout: 60_000 }, async () => {
    expect(html).not.toMatch(/<script|<link|<img|@import/)
    expect(html).not.toMatch(/url\((?!#)/)
    const again = assessed(text)
    expect(await reportHtml(again.plan, again.findings, tables)).toBe(html)
  })
})
