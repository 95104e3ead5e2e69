import { wholeCircleDeg } from '#core/units'

/**
 * A compass bearing turned to true north.
 *
 * @param magneticDeg - bearing as the compass showed it, clockwise from magnetic north, finite [°]
 * @param declinationDeg - magnetic north from true north, east positive, -180 to 180 [°]
 * @returns bearing clockwise from true north, 0 to below 360 [°]
 * @throws RangeError when a bearing is not finite or the declination out of range
 */
export function trueBearing(magneticDeg: number, declinationDeg: number): number {
  if (!Number.isFinite(magneticDeg))
    throw new RangeError(`trueBearing: magneticDeg must be finite, got ${magneticDeg}`)
  if (!(Math.abs(declinationDeg) <= 180))
    throw new RangeError(`trueBearing: declinationDeg must be -180 to 180, got ${declinationDeg}`)
  return wholeCircleDeg(magneticDeg + declinationDeg)
}
