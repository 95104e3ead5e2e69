/** A point left out and read from its neighbours. */
export interface Residual {
  /** Square of what the neighbours miss it by [m²]. */
  readonly squareM2: number
  /** Variance that measuring alone would give [m²], above 0. */
  readonly measuringM2: number
  /** Variance that the ground alone would give, for a coefficient of 1 [m²]. */
  readonly unit: number
}

/** Fewest points to judge roughness from; with 8 the coefficient is known to half its size [points]; own judgement. */
const FEWEST_RESIDUALS = 8

/** Rounds of the fit; the figure stands still after a few [rounds]. */
const ROUNDS = 30

/**
 * How rough the ground is between points, from what points miss when they are left out: the coefficient that makes
 * measuring and ground together explain the misses (Fisher scoring of the normal likelihood, the misses taken one by one).
 *
 * @param residuals - the points left out
 * @returns coefficient of the power variogram [m² at 1 m], 0 or more; undefined with fewer than 8 points
 * @see Cressie 1993, Statistics for Spatial Data, section 2.6
 */
export function fitRoughness(residuals: readonly Residual[]): number | undefined {
  if (residuals.length < FEWEST_RESIDUALS) return undefined
  let roughness = weighted(residuals, () => 1)
  for (let round = 0; round < ROUNDS; round++) {
    const before = roughness
    roughness = weighted(residuals, ({ measuringM2, unit }) => 1 / (measuringM2 + before * unit) ** 2)
  }
  return roughness
}

function weighted(residuals: readonly Residual[], weightOf: (residual: Residual) => number): number {
  let [above, below] = [0, 0]
  for (const residual of residuals) {
    const weight = weightOf(residual) * residual.unit
    above += weight * (residual.squareM2 - residual.measuringM2)
    below += weight * residual.unit
  }
  return below > 0 ? Math.max(0, above / below) : 0
}
