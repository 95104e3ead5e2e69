import { describe, expect, it } from 'vitest'
import { loadTables } from '#io'
import { fieldSheetHtml } from '#report'

const { survey } = loadTables()

describe.each(survey.methods)('field sheet of $name', (method) => {
  it('stands alone, says how, how good and what to mind, and has its columns and lines', async () => {
    const html = await fieldSheetHtml(method.id, survey, { lines: 17 })
    expect(html.startsWith('<!doctype html>')).toBe(true)
    expect(html).not.toMatch(/<script|<link|<img|@import|\bsrc=|https?:\/\//i)
    expect(html.replace(/<style>[^]*?<\/style>/, '')).not.toMatch(/NaN|undefined|\[object/)
    const words = html.replace(/&#39;/g, "'").replace(/&quot;/g, '"')
    for (const said of [method.name, method.expect, ...method.needs, ...method.steps, ...method.cautions])
      expect(words).toContain(said)
    for (const { head } of method.columns) expect(words).toContain(head)
    const body = /<tbody>([^]*)<\/tbody>/.exec(html)?.[1] ?? ''
    expect(body.split('<tr').length - 1).toBe(17)
  })

  it('gives the same bytes again', async () => {
    const asked = () => fieldSheetHtml(method.id, survey, { lines: 5 })
    expect(await asked()).toBe(await asked())
  })
})

it('draws the methods that fill a field book', async () => {
  for (const { id, book } of survey.methods)
    expect((await fieldSheetHtml(id, survey, { lines: 1 })).includes('<svg')).toBe(book !== null)
})

it('only a level book has a line for its sums', async () => {
  for (const { id, book } of survey.methods)
    expect((await fieldSheetHtml(id, survey, { lines: 1 })).includes('<tfoot')).toBe(book === 'level-book')
})

it('refuses a method that is not in the table, and no lines', async () => {
  await expect(fieldSheetHtml('nonsuch', survey, { lines: 5 })).rejects.toThrow(RangeError)
  await expect(fieldSheetHtml('a-frame', survey, { lines: 0 })).rejects.toThrow(RangeError)
})
