import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { schemaPages } from '../../src/io/schema-pages'

const folder = new URL('../../docs/schema/', import.meta.url)

describe('docs/schema', () => {
  it('holds what the schemas of the code say, and nothing else', () => {
    const pages = schemaPages()
    expect(readdirSync(folder).sort()).toEqual(pages.map(({ file }) => file).sort())
    for (const { file, text } of pages) expect(readFileSync(new URL(file, folder), 'utf8')).toBe(text)
  })

  it('gives every number its unit, or the words for a number that has none', () => {
    const lines = schemaPages()
      .filter(({ file }) => file.endsWith('.md'))
      .flatMap(({ text }) => text.split('\n'))
      .filter((line) => /^- `[^`]+`: (whole )?number/.test(line))
    expect(lines.length).toBeGreaterThan(100)
    expect(lines.filter((line) => !/\[[^\]]+\]/.test(line))).toEqual([])
  })
})
