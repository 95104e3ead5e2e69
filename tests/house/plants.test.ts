import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { z } from 'zod'
import { plantRegions, plantSchema, type Plant } from '#core/plants'
import { plainName } from '../../src/core/plants/names'
import { plantFiles, realTables } from '../core/plants/read-plants'

const sources = z
  .record(z.string(), z.unknown())
  .parse(JSON.parse(readFileSync(join(import.meta.dirname, '../../data/sources.json'), 'utf8')))

/** Fewest rows in all, and fewest that each region can buy. */
const LEAST_TAXA = 150
const LEAST_SOLD = 80

function repeated(values: readonly string[]): string[] {
  return [...new Set(values.filter((value, index) => values.indexOf(value) !== index))]
}

describe('the plant tables', () => {
  const { plants, legal, toxicity } = realTables()

  for (const { name, rows } of plantFiles())
    it(`${name}: every row is valid and rows are sorted by id`, () => {
      const parsed = z.array(plantSchema).parse(rows)
      const ids = parsed.map(({ id }) => id)
      expect(ids).toEqual([...ids].sort())
      expect(ids.length).toBeGreaterThan(0)
    })

  it('ids and accepted names are unique across files', () => {
    expect(repeated(plants.map(({ id }) => id))).toEqual([])
    expect(repeated(plants.map(({ name }) => plainName(name)))).toEqual([])
  })

  it('no older name is the accepted or older name of another row', () => {
    const accepted = new Set(plants.map(({ name }) => plainName(name)))
    const older = plants.flatMap(({ synonyms }) => [...new Set(synonyms.map(plainName))])
    expect(older.filter((name) => accepted.has(name))).toEqual([])
    expect(repeated(older)).toEqual([])
  })

  it('holds plants enough, in all and for every region', () => {
    expect(plants.length).toBeGreaterThanOrEqual(LEAST_TAXA)
    for (const region of plantRegions) {
      const sold = plants.filter((plant) => plant.sold.includes(region))
      expect(`${region} ${sold.length >= LEAST_SOLD}`).toBe(`${region} true`)
      expect(new Set(sold.flatMap(({ uses }) => uses)).size).toBe(5)
    }
  })

  it('no two rows of one genus are the same in every trait', () => {
    const traits = ({ name, ...plant }: Plant) =>
      JSON.stringify({ ...plant, id: '', synonyms: [], common: '', note: '', genus: name.split(' ')[0] })
    expect(repeated(plants.map(traits))).toEqual([])
  })

  it('every row of the three kinds names a known source', () => {
    const named = [...plants, ...legal, ...toxicity].map(({ source }) => source)
    expect([...new Set(named)].filter((key) => !(key in sources))).toEqual([])
  })

  it('legal rows are sorted by name, then region; poisons by name, each once', () => {
    const keys = legal.map(({ name, region }) => [name, region] as const)
    const sorted = [...keys].sort(([a, b], [c, d]) => (a === c ? order(b, d) : order(a, c)))
    expect(keys).toEqual(sorted)
    const names = toxicity.map(({ name }) => name)
    expect(names).toEqual([...names].sort())
    expect(repeated(names)).toEqual([])
  })
})

function order(one: string, other: string): number {
  return one < other ? -1 : one > other ? 1 : 0
}
