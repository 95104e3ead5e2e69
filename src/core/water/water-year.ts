import { eachMonth, type Twelve } from '#core/units'
import type { PlotWater, UnitEdge, WaterClimate, WaterMonth, WaterUnit } from './water.types'
import type { WaterTables } from './water-tables.schema'
import { runYear, type Running } from './course-year'
import { rootZone } from './root-zone'
import { plotAccount, unitAccount } from './water-accounts'
import { waterCourse } from './water-course'

/** The year has settled when no unit ends it this far from where it began [mm]. */
const SETTLED_MM = 1e-7

/** Years after which a year is reported as it stands, its stored change shown in the books [a]. */
const MOST_YEARS = 200

/**
 * A usual year of water on a slope: every unit's balance, run day by day and repeated until the year
 * ends as it began.
 *
 * Rain falls as on any other year of the same normals: no drought, no cloudburst, no snow cover.
 *
 * @param units - the pieces of the slope, in any order
 * @param climate - rain and reference evapotranspiration [mm a month]
 * @param tables - water tables
 * @param options - what lies around the plot
 * @param options.aboveM - length of ground that sheds onto the plot from above, taken to be as the top unit [m plan], 0 or more
 * @param options.edges - edges over which ground beyond sheds onto units, with what was described there
 * @returns each unit's months and account, and the plot's account
 * @throws RangeError when a unit, a link or a month makes no sense
 */
export function waterYear(
  units: readonly WaterUnit[],
  climate: WaterClimate,
  tables: WaterTables,
  options: { readonly aboveM: number; readonly edges?: readonly UnitEdge[] },
): PlotWater {
  const course = waterCourse(units, options.aboveM, options.edges).map((place): Running => {
    const zone = rootZone(place.unit, tables)
    return { ...place, zone, waterMm: zone.holdsMm, months: [] }
  })
  settle(course, climate)
  const years = course

    .filter((running) => running.place === 'plot')
    .map(({ unit, months }) => ({
      id: unit.id,
      months: twelve(months),
      account: unitAccount(unit.id, months),
    }))
  const placeOf = new Map(units.map((unit, at) => [unit.id, at]))
  years.sort((one, other) => (placeOf.get(one.id) ?? 0) - (placeOf.get(other.id) ?? 0))
  return { units: years, account: plotAccount(course) }
}

function settle(course: readonly Running[], climate: WaterClimate): void {
  for (let year = 0; year < MOST_YEARS; year++) {
    const starts = course.map((running) => running.waterMm)
    runYear(course, climate)
    const moved = course.map((running, at) => Math.abs(running.waterMm - (starts[at] ?? 0)))
    if (Math.max(0, ...moved) < SETTLED_MM) return
  }
}

function twelve(run: readonly WaterMonth[]): Twelve<WaterMonth> {
  return eachMonth((month) => {
    const found = run[month]
    if (found === undefined) throw new RangeError(`waterYear: month ${month} has not run`)
    return found
  })
}
