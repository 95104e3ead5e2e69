import { eachMonth, toRadians, type Month, type Twelve } from '#core/units'
import { daySun, representativeDays, sunAtHourAngle, type Direction } from '#core/sun'
import type { CellPlanes } from './cell-planes'
import { overFarSkyline } from './far-skyline'
import type { Shading } from './shade.types'
import { litOverSkyline, type Skylines } from './skylines'
import { thingsShadow } from './things-shadow'
import type { ZonedCells } from './zone-cells'

/** What the shares are taken of. */
export interface LitZones {
  readonly shading: Shading
  readonly skylines: Skylines
  readonly zones: ZonedCells
  readonly planes: CellPlanes
  /** Part that each cell is of its zone's plan area, 0 outside the zones. */
  readonly parts: Float64Array
  readonly latitudeDeg: number
}

/** Hours of a day [h]. */
const DAY_HOURS = 24
/** Turn of the earth [rad/h]. */
const EARTH_TURN_RAD_PER_H = Math.PI / 12

/**
 * Share of each zone's ground in direct sun at the middle of each hour by the sun, counted by what comes through, on each
 * month's representative day.
 *
 * @param of - zones, their ground and everything that can take the sun away
 * @returns for each month, a list of 24 shares to a zone [1], 0 to 1, midnight first
 */
export function zoneLitShares(of: LitZones): Twelve<readonly (readonly number[])[]> {
  const { shading, skylines, zones } = of
  const through = new Float32Array(of.parts.length)
  const cast = thingsShadow(shading.standing, shading.ground)
  const sums = new Float64Array(zones.count)
  return eachMonth((month) => {
    const lit = Array.from({ length: zones.count }, () => new Array<number>(DAY_HOURS).fill(0))
    for (let hour = 0; hour < DAY_HOURS; hour += 1) {
      const sun = sunInHour(of.latitudeDeg, month, hour)
      if (!overFarSkyline(shading.far, sun)) continue
      litOverSkyline(skylines, sun, through)
      cast(sun, month, through)
      sumLit(of, sun, through, sums.fill(0))
      for (let zone = 0; zone < zones.count; zone += 1) lit[zone]![hour] = Math.min(1, sums[zone]!)
    }
    return lit
  })
}

function sunInHour(latitudeDeg: number, month: Month, hour: number): Direction {
  const { declinationRad } = daySun(representativeDays[month])
  const hourAngleRad = (hour + 0.5 - DAY_HOURS / 2) * EARTH_TURN_RAD_PER_H
  return sunAtHourAngle(toRadians(latitudeDeg), declinationRad, hourAngleRad)
}

function sumLit(
  { zones, planes, parts }: LitZones,
  sun: Direction,
  through: Float32Array,
  sums: Float64Array,
): void {
  const { zoneOfCell } = zones
  const { east, north, up } = planes
  for (let cell = 0; cell < parts.length; cell += 1) {
    const lit = parts[cell]! * through[cell]!
    if (lit === 0) continue
    const facing = east[cell]! * sun.east + north[cell]! * sun.north + up[cell]! * sun.up
    if (facing > 0) sums[zoneOfCell[cell]!]! += lit
  }
}
