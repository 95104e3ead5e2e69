import { toRadians } from '#core/units'
import { withinRange } from '#core/sun'

/** Radiation above the air, square to the sun [MJ/m² min] (FAO-56 eq. 21). */
const SOLAR_CONSTANT_MJ_PER_M2_MIN = 0.082
const MINUTES_A_DAY = 24 * 60

/** Sun of one day as FAO-56 reckons it. */
interface FaoDay {
  readonly latitudeRad: number
  readonly declinationRad: number
  readonly sunsetRad: number
  /** Inverse relative distance of the sun [1]. */
  readonly nearness: number
}

/**
 * Radiation above the air on a level plane.
 *
 * @param latitudeDeg - latitude [°], north positive, -90 to 90
 * @param dayOfYear - day of the year [d], 1 to 366
 * @returns radiation of the day [MJ/m²]
 * @throws RangeError when a value is out of its range
 * @see FAO-56 (Allen et al. 1998), eq. 21 to 25
 */
export function extraterrestrialMjPerM2(latitudeDeg: number, dayOfYear: number): number {
  const { latitudeRad, declinationRad, sunsetRad, nearness } = faoDay(latitudeDeg, dayOfYear)
  const upright = sunsetRad * Math.sin(latitudeRad) * Math.sin(declinationRad)
  const sideways = Math.cos(latitudeRad) * Math.cos(declinationRad) * Math.sin(sunsetRad)
  return (MINUTES_A_DAY / Math.PI) * SOLAR_CONSTANT_MJ_PER_M2_MIN * nearness * (upright + sideways)
}

/**
 * Time from sunrise to sunset over a level horizon.
 *
 * @param latitudeDeg - latitude [°], north positive, -90 to 90
 * @param dayOfYear - day of the year [d], 1 to 366
 * @returns length of the day [h], 0 to 24
 * @throws RangeError when a value is out of its range
 * @see FAO-56 (Allen et al. 1998), eq. 34
 */
export function daylightHours(latitudeDeg: number, dayOfYear: number): number {
  return (24 / Math.PI) * faoDay(latitudeDeg, dayOfYear).sunsetRad
}

function faoDay(latitudeDeg: number, dayOfYear: number): FaoDay {
  withinRange('extraterrestrial: latitude [°]', latitudeDeg, -90, 90)
  withinRange('extraterrestrial: day of the year [d]', dayOfYear, 1, 366)
  const dayAngle = (2 * Math.PI * dayOfYear) / 365
  const latitudeRad = toRadians(latitudeDeg)
  const declinationRad = 0.409 * Math.sin(dayAngle - 1.39)
  const cosine = -Math.tan(latitudeRad) * Math.tan(declinationRad)
  return {
    latitudeRad,
    declinationRad,
    sunsetRad: Math.acos(Math.min(1, Math.max(-1, cosine))),
    nearness: 1 + 0.033 * Math.cos(dayAngle),
  }
}
