import { eachMonth, toRadians, type Month, type Twelve } from '#core/units'
import { daySun, representativeDays, sunAtHourAngle, sunSteps, type Direction, type SunSite } from '#core/sun'
import type { CellPlanes } from './cell-planes'
import type { ZonedCells } from './zone-cells'
import { FIRST_THING, NOBODY, SEVERAL, type InTheWay } from './zone-takers'

/** What becomes of one month's representative day in every zone. */
export interface MonthAccount {
  /** Hours with nothing between the zone and the sun [h], one to a zone. */
  readonly clearH: Float64Array
  /** Hours with the sun behind the zone's own slope [h], one to a zone. */
  readonly ownSlopeH: Float64Array
  /** Hours on the clock with one taker alone in the way [h]; for several at once, what they take. Zone after zone. */
  readonly takenH: Float64Array
  /** Hours on the clock with sun through leaves or branches, a tenth of it or more [h], one to a zone. */
  readonly leafyH: Float64Array
  /** Share of each zone in the sun at the middle of each hour by the sun, 0 to 1: a list of 24 to a zone. */
  readonly litShares: readonly (readonly number[])[]
}

/** What the account is taken of. */
export interface Accounted {
  readonly zones: ZonedCells
  /** Part of each cell inside the plot [1]. */
  readonly share: Float64Array
  /** Plan area of each zone [cells]. */
  readonly weights: Float64Array
  readonly planes: CellPlanes
  readonly site: SunSite
  /** Number of things that stand there. */
  readonly things: number
  readonly inTheWay: (sun: Direction, month: Month) => InTheWay
}

/** Hours of a day [h]. */
const DAY_HOURS = 24
/** Turn of the earth [rad/h]. */
const EARTH_TURN_RAD_PER_H = Math.PI / 12
/** Least share of direct light that counts as sun through leaves [1]: a tenth; own judgement. */
const LEAST_LEAFY = 0.1

/**
 * Walks the steps of each month's representative day, the same that `sunOnGround` adds up, and books every zone's time.
 *
 * @param of - zones, their ground and what stands between them and the sun
 * @returns the account of each month
 */
export function zoneAccounts(of: Accounted): Twelve<MonthAccount> {
  return eachMonth((month) => {
    const { count } = of.zones
    const account = {
      clearH: new Float64Array(count),
      ownSlopeH: new Float64Array(count),
      takenH: new Float64Array(count * (FIRST_THING + of.things)),
      leafyH: new Float64Array(count),
    }
    for (const { sun, hours } of stepsOf(of.site, month))
      bookStep(of, { sun, hours, ...of.inTheWay(sun, month) }, account)
    return { ...account, litShares: litShares(of, month) }
  })
}

function stepsOf(site: SunSite, month: Month) {
  const linke = typeof site.linke === 'number' ? site.linke : site.linke[month]
  return sunSteps({ ...site, linke, dayOfYear: representativeDays[month] })
}

/** One time of the sun. */
interface Moment extends InTheWay {
  readonly sun: Direction
  readonly hours: number
}

function bookStep(
  { zones, share, weights, planes, things }: Accounted,
  { sun, hours, taker, through }: Moment,
  { clearH, ownSlopeH, takenH, leafyH }: Omit<MonthAccount, 'litShares'>,
): void {
  const { zoneOfCell } = zones
  const takers = FIRST_THING + things
  const { east, north, up } = planes
  for (let cell = 0; cell < zoneOfCell.length; cell += 1) {
    const zone = zoneOfCell[cell]!
    if (zone < 0) continue
    const time = (share[cell]! * hours) / weights[zone]!
    if (!(east[cell]! * sun.east + north[cell]! * sun.north + up[cell]! * sun.up > 0)) {
      ownSlopeH[zone]! += time
      continue
    }
    const who = taker[cell]!
    if (who === NOBODY) {
      clearH[zone]! += time
      continue
    }
    const left = through[cell]!
    takenH[zone * takers + who]! += who === SEVERAL ? time * (1 - left) : time
    if (left >= LEAST_LEAFY) leafyH[zone]! += time
  }
}

// The sun at the middle of each hour, counted by what comes through.
function litShares(of: Accounted, month: Month): readonly (readonly number[])[] {
  const { zones, share, weights, planes } = of
  const { east, north, up } = planes
  const lit = Array.from({ length: zones.count }, () => new Array<number>(DAY_HOURS).fill(0))
  const { declinationRad } = daySun(representativeDays[month])
  const latitudeRad = toRadians(of.site.latitudeDeg)
  for (let hour = 0; hour < DAY_HOURS; hour += 1) {
    const sun = sunAtHourAngle(
      latitudeRad,
      declinationRad,
      (hour + 0.5 - DAY_HOURS / 2) * EARTH_TURN_RAD_PER_H,
    )
    if (!(sun.up > 0)) continue
    const { through } = of.inTheWay(sun, month)
    const sums = new Float64Array(zones.count)
    for (let cell = 0; cell < share.length; cell += 1) {
      const zone = zones.zoneOfCell[cell]!
      if (zone >= 0 && east[cell]! * sun.east + north[cell]! * sun.north + up[cell]! * sun.up > 0)
        sums[zone]! += share[cell]! * through[cell]!
    }
    sums.forEach((sum, zone) => (lit[zone]![hour] = Math.min(1, sum / weights[zone]!)))
  }
  return lit
}
