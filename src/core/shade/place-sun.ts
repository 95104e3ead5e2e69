import { daySun, sunAtHourAngle, sunsetHourAngleRad, withinRange, type Direction } from '#core/sun'
import { toDegrees, toRadians, wholeCircleDeg } from '#core/units'

/** The sun's way over a level horizon on one day. */
export interface SunArc {
  /** Time by the sun at which its centre rises and sets [h]: 0 and 24 in polar day, both 12 in polar night. */
  readonly riseH: number
  readonly setH: number
  /** Where the sun stands at a time by the sun [h]. */
  readonly at: (hour: number) => { sun: Direction; azimuthDeg: number; altitudeDeg: number }
}

/** Turn of the earth [rad/h]. */
const EARTH_TURN_RAD_PER_H = Math.PI / 12

/**
 * The sun's way on a day, its declination held for that day.
 *
 * @param latitudeDeg - latitude [°], north positive, -90 to 90
 * @param dayOfYear - day counted from 1 January without a leap day [d], 1 to 366
 * @returns rise and set over a level horizon, and the sun at any time
 * @throws RangeError when the latitude is off the globe or the day not in the year
 */
export function sunArc(latitudeDeg: number, dayOfYear: number): SunArc {
  withinRange('sunArc: latitude [°]', latitudeDeg, -90, 90)
  const latitudeRad = toRadians(latitudeDeg)
  const { declinationRad } = daySun(dayOfYear)
  const halfDayH = sunsetHourAngleRad(latitudeRad, declinationRad) / EARTH_TURN_RAD_PER_H
  return {
    riseH: 12 - halfDayH,
    setH: 12 + halfDayH,
    at: (hour) => {
      const sun = sunAtHourAngle(latitudeRad, declinationRad, (hour - 12) * EARTH_TURN_RAD_PER_H)
      return {
        sun,
        azimuthDeg: wholeCircleDeg(toDegrees(Math.atan2(sun.east, sun.north))),
        altitudeDeg: toDegrees(Math.asin(Math.min(1, Math.max(-1, sun.up)))),
      }
    },
  }
}
