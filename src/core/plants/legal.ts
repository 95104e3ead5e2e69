import type { LegalRow, Plant } from './plant.schema'
import { lawsOver } from './legal-regions'
import { namesOf, plainName } from './names'

/** The entry that stands for a whole class of plants: everything from outside its native range. */
const ANY_NON_NATIVE = 'any plant outside its native range'

/** Acts that make planting there an offence or the plant unobtainable: never offered. */
const barringActs: readonly LegalRow['acts'][number][] = ['sell', 'grow', 'noxious']

/**
 * Every entry of the legal lists that touches a plant in one place. An entry covers the taxon it names and all
 * kinds within it, under the accepted or an older name; an entry for a subspecies leaves the plain species alone.
 *
 * @param plant - the plant
 * @param legalRegion - place whose laws count; undefined when not said
 * @param rows - the legal table
 * @returns the entries in force there, in the table's order
 */
export function legalEntries(
  plant: Plant,
  legalRegion: string | undefined,
  rows: readonly LegalRow[],
): LegalRow[] {
  if (legalRegion === undefined) return []
  const regions = lawsOver(legalRegion)
  if (regions.length === 0) return []
  const index = indexOf(rows)
  const hits = namesOf(plant).flatMap((name) => index.get(name) ?? [])
  const wide = plant.native.includes('british-isles') ? [] : (index.get(plainName(ANY_NON_NATIVE)) ?? [])
  return [...new Set([...hits, ...wide])].filter(
    (row) => regions.includes(row.region) && !isException(plant, row),
  )
}

/**
 * Whether an entry keeps a plant from being offered. Planting in the wild alone does not: it is a warning.
 *
 * @param row - an entry of the legal table
 * @returns true when selling, growing or spreading is barred
 */
export function bars(row: LegalRow): boolean {
  return row.acts.some((act) => barringActs.includes(act))
}

function isException(plant: Plant, row: LegalRow): boolean {
  const names = namesOf(plant)
  return (row.except ?? []).some((name) => names.includes(plainName(name)))
}

const indices = new WeakMap<readonly LegalRow[], ReadonlyMap<string, readonly LegalRow[]>>()

function indexOf(rows: readonly LegalRow[]): ReadonlyMap<string, readonly LegalRow[]> {
  const before = indices.get(rows)
  if (before) return before
  const index = new Map<string, LegalRow[]>()
  for (const row of rows)
    for (const name of new Set([plainName(row.name), plainName(row.listedAs)]))
      index.set(name, [...(index.get(name) ?? []), row])
  indices.set(rows, index)
  return index
}
