import { eachMonth, northernTwin, type Twelve } from '#core/units'
import type { ShadeTables } from './shade-tables.schema'
import type { Thing } from './standing-thing.types'

type Leaf = NonNullable<Thing['leaf']>

/**
 * Share of direct light that comes through a thing, month by month.
 *
 * @param thing - the thing, with what the person knows of its leaves and gaps
 * @param usualLeaf - whether its kind usually drops its leaves; undefined for kinds without leaves
 * @param tables - what usually comes through leaves and branches, and when trees are in leaf
 * @param latitudeDeg - latitude [°], north positive, -90 to 90
 * @returns shares [1], 0 to 1, January first
 * @throws RangeError when the table has no row for a kind with leaves
 */
export function lightThrough(
  thing: Thing,
  usualLeaf: Leaf | undefined,
  tables: ShadeTables,
  latitudeDeg: number,
): Twelve<number> {
  if (usualLeaf === undefined) return eachMonth(() => thing.leafyLight ?? 0)
  const leaf = thing.leaf ?? usualLeaf
  const row = tables.things.light.find((one) => one.kind === thing.kind && one.leaf === leaf)
  if (row === undefined)
    throw new RangeError(`lightThrough: no light through a ${leaf} ${thing.kind} in the table`)
  const leafyLight = thing.leafyLight ?? row.leafyLight
  if (leaf === 'evergreen') return eachMonth(() => leafyLight)
  const bareLight = thing.bareLight ?? row.bareLight
  const inLeaf = leafSeason(thing, tables, latitudeDeg)
  return eachMonth((month) => (inLeaf[month] ? leafyLight : bareLight))
}

// Months that the person gives hold as they are; usual ones are those of the north.
function leafSeason({ leafMonths }: Thing, { things }: ShadeTables, latitudeDeg: number): Twelve<boolean> {
  return eachMonth((month) =>
    leafMonths
      ? isWithin(month + 1, leafMonths)
      : isWithin(northernTwin(month, latitudeDeg) + 1, things.leafMonths),
  )
}

// Months 1 to 12; a season may run over the end of the year.
const isWithin = (month: number, { from, to }: { readonly from: number; readonly to: number }): boolean =>
  from <= to ? month >= from && month <= to : month >= from || month <= to
