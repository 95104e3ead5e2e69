import { eachMonth, type Month, type Twelve } from '#core/units'
import { representativeDays, sunSteps, type Direction, type SunSite } from '#core/sun'
import type { CellPlanes } from './cell-planes'
import type { ZonedCells } from './zone-cells'
import { FIRST_THING, NOBODY, OWN_SLOPE, SEVERAL, type InTheWay } from './zone-takers'

/** What becomes of one month's representative day in every zone: hours on the clock, one number to a zone [h]. */
export interface MonthAccount {
  /** Nothing between the zone and the sun. */
  readonly clearH: Float64Array
  /**
   * Each taker alone in the way, ground under NOBODY and the zone's own slope under OWN_SLOPE; for several at once, what
   * they take. Zone after zone.
   */
  readonly bookedH: Float64Array
  /** Sun through leaves or branches, a tenth of it or more. */
  readonly leafyH: Float64Array
}

/** What the account is taken of. */
export interface Accounted {
  readonly zones: ZonedCells
  /** Part that each cell is of its zone's plan area, 0 outside the zones. */
  readonly parts: Float64Array
  readonly planes: CellPlanes
  readonly site: SunSite
  /** Number of things that stand there. */
  readonly things: number
  readonly inTheWay: (sun: Direction, month: Month) => InTheWay
}

/** Least share of direct light that counts as sun through leaves [1]: a tenth; own judgement. */
const LEAST_LEAFY = 0.1

/**
 * Walks the steps of each month's representative day, the same that `sunOnGround` adds up, and books every zone's time.
 *
 * @param of - zones, their ground and what stands between them and the sun
 * @returns the account of each month
 */
export function zoneAccounts(of: Accounted): Twelve<MonthAccount> {
  const { site } = of
  const { count } = of.zones
  return eachMonth((month) => {
    const account = {
      clearH: new Float64Array(count),
      bookedH: new Float64Array(count * (FIRST_THING + of.things)),
      leafyH: new Float64Array(count),
    }
    const linke = typeof site.linke === 'number' ? site.linke : site.linke[month]
    for (const { sun, hours } of sunSteps({ ...site, linke, dayOfYear: representativeDays[month] }))
      bookStep(of, { sun, hours, ...of.inTheWay(sun, month) }, account)
    return account
  })
}

/** One time of the sun. */
interface Moment extends InTheWay {
  readonly sun: Direction
  readonly hours: number
}

function bookStep(
  { zones, parts, planes, things }: Accounted,
  { sun, hours, taker, through }: Moment,
  { clearH, bookedH, leafyH }: MonthAccount,
): void {
  const { zoneOfCell } = zones
  const takers = FIRST_THING + things
  const { east, north, up } = planes
  for (let zone = 0; zone < zones.count; zone += 1) clearH[zone]! += hours
  for (let cell = 0; cell < parts.length; cell += 1) {
    const facing = east[cell]! * sun.east + north[cell]! * sun.north + up[cell]! * sun.up > 0
    const who = facing ? taker[cell]! : OWN_SLOPE
    const left = through[cell]!
    if (who === NOBODY && left > 0) continue
    const time = parts[cell]! * hours
    if (time === 0) continue
    const zone = zoneOfCell[cell]!
    clearH[zone]! -= time
    bookedH[zone * takers + who]! += who === SEVERAL ? time * (1 - left) : time
    if (facing && left >= LEAST_LEAFY) leafyH[zone]! += time
  }
}
