import { withinRange } from './within-range'

/** What the sun does not change in the course of a day. */
export interface DaySun {
  /** Height of the noon sun above the equator's plane [rad]. */
  readonly declinationRad: number
  /** Radiation above the air, square to the sun [W/m²]. */
  readonly aboveAirWPerM2: number
}

// Constants of the European Solar Radiation Atlas as given by Rigollier et al. 2000 and Hofierka & Suri 2002.
/** Mean radiation above the air [W/m²]. */
const SOLAR_CONSTANT_W_PER_M2 = 1367
/** Days of a mean year [d]. */
const YEAR_DAYS = 365.25
/** Swing of radiation between the near and the far sun [1], and day angle of the nearest sun [rad]. */
const NEARNESS = { swing: 0.03344, phaseRad: 0.048869 }
/** Sine of the tilt of the earth [1]; spring point [rad]; effect of the oval path [1]; its phase [rad]. */
const TILT = { sine: 0.3978, springRad: 1.4, oval: 0.0355, ovalPhaseRad: 0.0489 }

/**
 * Declination and strength of the sun on a day.
 *
 * @param dayOfYear - day of the year [d], 1 to 366
 * @returns declination [rad] and radiation above the air [W/m²]
 * @throws RangeError when the day is not in the year
 * @see Hofierka & Suri 2002, after Gruter 1984 (European Solar Radiation Atlas)
 */
export function daySun(dayOfYear: number): DaySun {
  withinRange('daySun: day of the year [d]', dayOfYear, 1, 366)
  const dayAngle = (2 * Math.PI * dayOfYear) / YEAR_DAYS
  const path = dayAngle - TILT.springRad + TILT.oval * Math.sin(dayAngle - TILT.ovalPhaseRad)
  return {
    declinationRad: Math.asin(TILT.sine * Math.sin(path)),
    aboveAirWPerM2: SOLAR_CONSTANT_W_PER_M2 * (1 + NEARNESS.swing * Math.cos(dayAngle - NEARNESS.phaseRad)),
  }
}

/**
 * Half the time from sunrise to sunset over a level horizon, as an angle.
 *
 * @param latitudeRad - latitude [rad], north positive
 * @param declinationRad - declination of the sun [rad]
 * @returns hour angle of sunset [rad]: 0 in polar night, pi in polar day
 */
export function sunsetHourAngleRad(latitudeRad: number, declinationRad: number): number {
  const cosine = -Math.tan(latitudeRad) * Math.tan(declinationRad)
  return Math.acos(Math.min(1, Math.max(-1, cosine)))
}
