import { sunArc } from './place-sun'

/** Where the sun stands at one time of its path. */
export interface SunPathPoint {
  /** Time by the sun [h], 12 when it is highest. */
  readonly hour: number
  /** Direction of the sun, clockwise from true north [°], 0 to below 360. */
  readonly azimuthDeg: number
  /** True height above the level horizon [°]. */
  readonly altitudeDeg: number
}

/** Points of a path in an hour [1]. */
const POINTS_PER_HOUR = 4

/**
 * The sun's path over a level horizon on one day, for drawing: every quarter of an hour by the sun, with rise and set.
 *
 * @param latitudeDeg - latitude [°], north positive, -90 to 90
 * @param dayOfYear - day counted from 1 January without a leap day [d], 1 to 366
 * @returns places of the sun in order of time; none in polar night, midnight to midnight in polar day
 * @throws RangeError when the latitude is off the globe or the day not in the year
 */
export function sunPath(latitudeDeg: number, dayOfYear: number): readonly SunPathPoint[] {
  const { riseH, setH, at } = sunArc(latitudeDeg, dayOfYear)
  if (riseH === setH) return []
  const first = Math.floor(riseH * POINTS_PER_HOUR) + 1
  const last = Math.ceil(setH * POINTS_PER_HOUR) - 1
  const quarters = Array.from({ length: last - first + 1 }, (_, step) => (first + step) / POINTS_PER_HOUR)
  return [riseH, ...quarters, setH].map((hour) => {
    const { azimuthDeg, altitudeDeg } = at(hour)
    return { hour, azimuthDeg, altitudeDeg: Math.max(0, altitudeDeg) }
  })
}
