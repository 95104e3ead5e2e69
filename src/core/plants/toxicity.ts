import type { Plant, ToxicityRow } from './plant.schema'
import { namesOf, plainName } from './names'

/**
 * What is known to be poisonous about a plant: the entry for the taxon itself, else its species, else its genus.
 *
 * @param plant - the plant
 * @param rows - the toxicity table
 * @returns the closest entry; undefined when none is kept, which does not mean harmless
 */
export function toxicityOf(plant: Plant, rows: readonly ToxicityRow[]): ToxicityRow | undefined {
  const index = indexOf(rows)
  const names = namesOf(plant)
  const hit = names.find((name) => !isGenus(name) && index.has(name)) ?? names.find((name) => index.has(name))
  return hit === undefined ? undefined : index.get(hit)
}

function isGenus(name: string): boolean {
  return name.endsWith(' spp.')
}

const indices = new WeakMap<readonly ToxicityRow[], ReadonlyMap<string, ToxicityRow>>()

function indexOf(rows: readonly ToxicityRow[]): ReadonlyMap<string, ToxicityRow> {
  const before = indices.get(rows)
  if (before) return before
  const index = new Map(rows.map((row) => [plainName(row.name), row]))
  indices.set(rows, index)
  return index
}
