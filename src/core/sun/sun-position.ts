import { getPosition } from 'suncalc'
import { toDegrees, toRadians, wholeCircleDeg } from '#core/units'
import { withinRange } from './within-range'

/** Where the sun stands. */
export interface SunPosition {
  /** Direction of the sun, clockwise from true north [°], 0 to below 360. */
  readonly azimuthDeg: number
  /** Height of the sun's centre above the level horizon, bending of light taken out [°]. */
  readonly altitudeDeg: number
  /** The same as the eye sees it, lifted by the bending of light [°]. */
  readonly apparentAltitudeDeg: number
}

// Refraction as suncalc adds it: Meeus, Astronomical Algorithms, eq. 16.4, in radians.
/** Scale of the refraction [rad]. */
const REFRACTION_RAD = 0.0002967
/** Numerator of the inner term [rad²]. */
const INNER_RAD2 = 0.00312536
/** Offset of the inner term [rad]. */
const INNER_OFFSET_RAD = 0.08901179

/** Rounds until the true altitude stands still to 1e-9 rad. */
const ROUNDS = 6

/**
 * Where the sun stands at an instant.
 *
 * @param instant - the instant
 * @param latitudeDeg - latitude [°], north positive, -90 to 90
 * @param longitudeDeg - longitude [°], east positive, -180 to 180
 * @returns direction and height of the sun [°]
 * @throws RangeError when the place is off the globe or the instant is not valid
 * @see Meeus, Astronomical Algorithms, 2nd ed. 1998, ch. 16 and 25; checked by the NREL SPA example
 */
export function sunPosition(instant: Date, latitudeDeg: number, longitudeDeg: number): SunPosition {
  withinRange('sunPosition: latitude [°]', latitudeDeg, -90, 90)
  withinRange('sunPosition: longitude [°]', longitudeDeg, -180, 180)
  if (Number.isNaN(instant.valueOf())) throw new RangeError('sunPosition: the instant must be a valid date')
  const { azimuth, altitude } = getPosition(instant, latitudeDeg, longitudeDeg)
  return {
    azimuthDeg: wholeCircleDeg(azimuth),
    altitudeDeg: toDegrees(withoutRefraction(toRadians(altitude))),
    apparentAltitudeDeg: altitude,
  }
}

// Below the horizon suncalc goes on adding the refraction of the horizon itself.
function withoutRefraction(apparentRad: number): number {
  let trueRad = apparentRad
  for (let round = 0; round < ROUNDS; round += 1) trueRad = apparentRad - refractionRad(trueRad)
  return trueRad
}

function refractionRad(trueRad: number): number {
  const height = Math.max(trueRad, 0)
  return REFRACTION_RAD / Math.tan(height + INNER_RAD2 / (height + INNER_OFFSET_RAD))
}
