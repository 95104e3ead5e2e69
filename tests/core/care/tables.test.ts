import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { coverKinds } from '#core/cover'
import { operationsSchema } from '#core/care'
import { tables } from './tables'

const sources = Object.keys(JSON.parse(readFileSync('data/sources.json', 'utf8')) as Record<string, unknown>)

describe('tables of care', () => {
  it('name a known source for outputs and ways of working too', () => {
    const named = [
      ...tables.cover.machines.flatMap((row) => [row.outputSource, row.clearsSource]),
      ...tables.operations.flatMap((row) => [row.outputSource, row.howSource]),
    ].filter((key) => key !== undefined)
    expect(named.length).toBeGreaterThan(0)
    expect(named.filter((key) => !sources.includes(key))).toEqual([])
  })

  it('say why and whence for every output they state', () => {
    for (const row of tables.operations.filter(({ perHour }) => perHour !== undefined)) {
      expect(row.perHourUnit).toBeDefined()
      expect(row.perHourBecause).toBeDefined()
      expect(row.outputSource).toBeDefined()
    }
    for (const row of tables.cover.machines)
      expect(row.clearsM2PerH === undefined).toBe(row.clearsSource === undefined)
  })

  it('have work for every cover, and look at every one for slips (common practice, no source)', () => {
    for (const cover of coverKinds) {
      const marks = tables.operations.filter(({ covers }) => covers.includes(cover)).map(({ mark }) => mark)
      expect(marks).toContain('look')
    }
  })

  it('let no cut of woody cover forget the birds (common practice, no source)', () => {
    const woody = tables.operations.filter(
      ({ covers, mark }) => mark === 'cut' && (covers.includes('shrubs') || covers.includes('trees')),
    )
    expect(woody.length).toBeGreaterThan(0)
    for (const row of woody) expect(row.avoid).toContain('birds')
  })

  it('refuse a row that states no output for handwork, or one for a machine', () => {
    const [mow] = tables.operations.filter(({ work }) => work === 'mow')
    const [weed] = tables.operations.filter(({ mark }) => mark === 'weed')
    expect(operationsSchema.safeParse([{ ...mow, perHour: 5 }]).success).toBe(false)
    expect(operationsSchema.safeParse([{ ...weed, perHour: undefined }]).success).toBe(false)
    expect(operationsSchema.safeParse([weed]).success).toBe(true)
  })
})
