import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { z } from 'zod'

const folder = join(import.meta.dirname, '../../data')

function read(file: string): unknown {
  return JSON.parse(readFileSync(join(folder, file), 'utf8'))
}

const sources = z
  .record(
    z.string().regex(/^[a-z0-9-]+$/),
    z.strictObject({
      kind: z.enum(['published', 'standard', 'common-practice', 'memory', 'own-judgement', 'measured']),
      cite: z.string().min(5),
      note: z.string().optional(),
    }),
  )
  .parse(read('sources.json'))

const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(
  (file) => file.endsWith('.json') && !file.endsWith('.lynchet.json') && file !== 'sources.json',
)

/** Every object in a table that has a `source`, and every `because` that has none. */
function rowsOf(value: unknown, path: string): { path: string; row: Record<string, unknown> }[] {
  if (Array.isArray(value)) return value.flatMap((one, at) => rowsOf(one, `${path}[${at}]`))
  if (typeof value !== 'object' || value === null) return []
  const row = value as Record<string, unknown>
  const below = Object.entries(row).flatMap(([key, one]) => rowsOf(one, `${path}.${key}`))
  return 'source' in row || 'because' in row ? [{ path, row }, ...below] : below
}

describe.each(files)('data/%s', (file) => {
  const rows = rowsOf(read(file), file)

  it('has rows, and every row names a known source', () => {
    expect(rows.length).toBeGreaterThan(0)
    const lost = rows.filter(({ row }) => typeof row.source !== 'string' || !(row.source in sources))
    expect(lost.map(({ path, row }) => `${path}: ${String(row.source)}`)).toEqual([])
  })

  it('gives every rule its own id', () => {
    const ids = rows.filter(({ row }) => 'because' in row).map(({ row }) => row.id)
    expect(ids.filter((id) => typeof id !== 'string')).toEqual([])
    expect(new Set(ids).size).toBe(ids.length)
  })
})

it('every source is used by a table or named in the code', () => {
  const text = [
    ...files.map((file) => readFileSync(join(folder, file), 'utf8')),
    ...readdirSync(join(folder, '../src'), { recursive: true, encoding: 'utf8' })
      .filter((file) => /\.(ts|vue)$/.test(file))
      .map((file) => readFileSync(join(folder, '../src', file), 'utf8')),
  ].join('\n')
  expect(Object.keys(sources).filter((key) => !new RegExp(`['"]${key}['"]`).test(text))).toEqual([])
})
