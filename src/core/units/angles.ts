/** Degrees in half a turn [°]. */
const HALF_TURN_DEG = 180

/**
 * Degrees to radians.
 *
 * @param angleDeg - angle [°]
 * @returns angle [rad]
 */
export function toRadians(angleDeg: number): number {
  return (angleDeg * Math.PI) / HALF_TURN_DEG
}

/**
 * Radians to degrees.
 *
 * @param angleRad - angle [rad]
 * @returns angle [°]
 */
export function toDegrees(angleRad: number): number {
  return (angleRad * HALF_TURN_DEG) / Math.PI
}

/**
 * Turns any bearing into the circle from north.
 *
 * @param bearingDeg - bearing [°], any size
 * @returns the same bearing [°], 0 to below 360
 */
export function wholeCircleDeg(bearingDeg: number): number {
  return ((bearingDeg % 360) + 360) % 360
}

/**
 * Angle between two bearings.
 *
 * @param oneDeg - bearing [°]
 * @param otherDeg - bearing [°]
 * @returns the smaller angle between them [°], 0 to 180
 */
export function bearingGapDeg(oneDeg: number, otherDeg: number): number {
  const gapDeg = wholeCircleDeg(oneDeg - otherDeg)
  return gapDeg > HALF_TURN_DEG ? 360 - gapDeg : gapDeg
}

/** The eight winds, clockwise from north. */
const winds = [
  'north',
  'north-east',
  'east',
  'south-east',
  'south',
  'south-west',
  'west',
  'north-west',
] as const

/**
 * A bearing in words.
 *
 * @param bearingDeg - bearing clockwise from true north [°]
 * @returns the nearest of the eight winds, such as "south-west"
 */
export function windName(bearingDeg: number): string {
  return winds[Math.round(wholeCircleDeg(bearingDeg) / 45) % 8] ?? 'north'
}

/**
 * Angle of a slope given as rise over plan length.
 *
 * @param gradient - rise per metre of plan length [m/m], finite
 * @returns angle from horizontal [°], above -90 and below 90
 * @throws RangeError when the gradient is not finite
 */
export function gradientToDeg(gradient: number): number {
  if (!Number.isFinite(gradient)) throw new RangeError(`gradientToDeg: must be finite, got ${gradient}`)
  return toDegrees(Math.atan(gradient))
}

/**
 * Rise over plan length of a slope given as an angle.
 *
 * @param slopeDeg - angle from horizontal [°], above -90 and below 90
 * @returns rise per metre of plan length [m/m]
 * @throws RangeError when the slope is vertical or beyond
 */
export function degToGradient(slopeDeg: number): number {
  if (!(Math.abs(slopeDeg) < 90)) throw new RangeError(`degToGradient: must be below 90°, got ${slopeDeg}`)
  return Math.tan(toRadians(slopeDeg))
}

/**
 * How much longer the ground is than its plan.
 *
 * @param slopeDeg - angle from horizontal [°], 0 to below 90
 * @returns slope area over plan area [m²/m²], 1 or more
 * @throws RangeError when the slope is vertical or beyond
 */
export function slopeAreaFactor(slopeDeg: number): number {
  if (!(Math.abs(slopeDeg) < 90)) throw new RangeError(`slopeAreaFactor: must be below 90°, got ${slopeDeg}`)
  return 1 / Math.cos(toRadians(slopeDeg))
}
