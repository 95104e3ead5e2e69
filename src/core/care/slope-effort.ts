import { degToGradient } from '#core/units'

/** Tobler's walking speed on the level path that is easiest, 5 % downhill [km/h]; Tobler 1993. */
const BEST_SPEED_KMH = 6

/** How fast speed falls away from that slope [per m/m]; Tobler 1993. */
const FALL_OFF = 3.5

/** The easiest slope is a little downhill [m/m]; Tobler 1993. */
const EASIEST_GRADIENT = -0.05

/**
 * Speed of a person walking a slope.
 *
 * @param gradient - rise per metre of plan length, uphill positive [m/m], finite
 * @returns walking speed [km/h], above 0 to 6
 * @throws RangeError when the gradient is not finite
 * @see Tobler 1993, Three presentations on geographical analysis and modeling, NCGIA technical report 93-1
 */
export function walkingSpeedKmh(gradient: number): number {
  if (!Number.isFinite(gradient))
    throw new RangeError(`walkingSpeedKmh: gradient must be finite, got ${gradient}`)
  return BEST_SPEED_KMH * Math.exp(-FALL_OFF * Math.abs(gradient - EASIEST_GRADIENT))
}

/**
 * How much longer it takes to walk up a slope and down again than as far on the level.
 *
 * @param slopeDeg - slope [°], 0 to below 90
 * @returns time over time on the level [ratio], 1 or more
 * @throws RangeError when the slope is outside 0 to below 90°
 * @see Tobler 1993, NCGIA technical report 93-1
 */
export function roundTripPenalty(slopeDeg: number): number {
  if (!(slopeDeg >= 0 && slopeDeg < 90))
    throw new RangeError(`roundTripPenalty: slopeDeg must be 0 to below 90, got ${slopeDeg}`)
  const gradient = degToGradient(slopeDeg)
  const upAndDown = 1 / walkingSpeedKmh(gradient) + 1 / walkingSpeedKmh(-gradient)
  return (upAndDown * walkingSpeedKmh(0)) / 2
}
