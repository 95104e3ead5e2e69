import { toDegrees } from '#core/units'

/** Variances and covariance of the two gradients of a place [m²/m²]. */
export interface GradientErrors {
  readonly eastEast: number
  readonly eastNorth: number
  readonly northNorth: number
}

/**
 * Standard error of a slope from the errors of its two gradients.
 *
 * Along the fall the law of propagation to the first order: slope = atan|g|. Across it an error can only lengthen the
 * gradient; its part is second order on a slope and grows into a full share on level ground, where the error of the slope
 * is the root of both variances together.
 *
 * @param eastGradient - rise per metre eastward [m/m], finite
 * @param northGradient - rise per metre northward [m/m], finite
 * @param errors - variances and covariance of the two [m²/m²]
 * @returns standard error of the slope [°]
 * @throws RangeError when a gradient is not finite
 * @see JCGM 100:2008, Guide to the expression of uncertainty in measurement, clause 5.1.2
 */
export function slopeErrorDeg(eastGradient: number, northGradient: number, errors: GradientErrors): number {
  const square = eastGradient * eastGradient + northGradient * northGradient
  if (!Number.isFinite(square))
    throw new RangeError(`slopeErrorDeg: gradients must be finite, got ${eastGradient} and ${northGradient}`)
  const { eastEast, eastNorth, northNorth } = errors
  const total = eastEast + northNorth
  if (square === 0) return toDegrees(Math.sqrt(total))
  const along =
    (eastEast * eastGradient * eastGradient +
      2 * eastNorth * eastGradient * northGradient +
      northNorth * northGradient * northGradient) /
    square
  const across = Math.max(0, total - along)
  const variance = along + Math.min(across, (ACROSS_SHARE * across * across) / square)
  return toDegrees(Math.sqrt(Math.max(0, variance)) / (1 + square))
}

/** Mean square of δ²/2 for a normal δ, in squares of its variance: 3/4 [1]. */
const ACROSS_SHARE = 3 / 4
