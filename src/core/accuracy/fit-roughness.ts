/** A point left out and read from its neighbours. */
export interface Residual {
  /** Square of what the neighbours miss it by [m²]. */
  readonly squareM2: number
  /** Variance that measuring alone would give [m²], above 0. */
  readonly measuringM2: number
  /** Variance that the ground alone would give, for a coefficient of 1 [m²]. */
  readonly unit: number
}

/** Fewest points to judge roughness from [points]; own judgement. */
const FEWEST_RESIDUALS = 8

/** Half of all squares of a standard normal lie below this [1]: the median of χ² with one degree of freedom. */
const MIDDLE_SQUARE = 0.454936

/**
 * How rough the ground is between points, from what points miss when they are left out: the coefficient with which half
 * the misses lie below the median of the normal law. The median is used because surveyors set points where the ground
 * bends: such a point misses by the bend, which is no roughness of the ground on either side, and so does a blunder.
 *
 * @param residuals - the points left out
 * @returns coefficient of the power variogram [m² at 1 m], 0 or more; undefined with fewer than 8 points
 * @see Cressie 1993, Statistics for Spatial Data, section 2.4.3
 */
export function fitRoughness(residuals: readonly Residual[]): number | undefined {
  if (residuals.length < FEWEST_RESIDUALS) return undefined
  // Each miss has the coefficient with which it would lie just at the median; theirs is the middle one of all.
  const own = residuals
    .map(({ squareM2, measuringM2, unit }) => (squareM2 / MIDDLE_SQUARE - measuringM2) / unit)
    .sort((one, other) => one - other)
  const middle = own.length >> 1
  const median = own.length % 2 === 1 ? own[middle]! : (own[middle - 1]! + own[middle]!) / 2
  return Math.max(0, median)
}
