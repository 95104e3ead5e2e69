import { eachMonth, northernTwin, type Twelve } from '#core/units'
import type { ShadeTables } from './shade-tables.schema'
import type { Thing } from './standing-thing.types'
import type { ThingFigures } from './thing-figures'

/**
 * Share of direct light that comes through a thing, month by month.
 *
 * @param figures - what comes through its leaves, gaps and branches
 * @param leafMonths - first and last month in leaf, 1 to 12; the usual ones when left out
 * @param usual - months in leaf in the north; turned round in the south
 * @param latitudeDeg - latitude [°], north positive, -90 to 90
 * @returns shares [1], 0 to 1, January first
 */
export function lightThrough(
  figures: ThingFigures,
  leafMonths: Thing['leafMonths'],
  usual: ShadeTables['things']['leafMonths'],
  latitudeDeg: number,
): Twelve<number> {
  const { leafyLight, bareLight = leafyLight } = figures
  return eachMonth((month) => {
    const inLeaf = leafMonths
      ? isWithin(month + 1, leafMonths)
      : isWithin(northernTwin(month, latitudeDeg) + 1, usual)
    return inLeaf ? leafyLight : bareLight
  })
}

// Months 1 to 12; a season may run over the end of the year.
const isWithin = (month: number, { from, to }: { readonly from: number; readonly to: number }): boolean =>
  from <= to ? month >= from && month <= to : month >= from || month <= to
