/**
 * Half the mean square difference of level of two places, for ground whose coefficient is 1. The exponent says how smooth
 * ground is, from 0 (as rough as can be) to below 1: H = 0.75 is a surface of fractal dimension 2.25, near the middle of what
 * is measured on land; own judgement, see docs/methods/accuracy.md.
 *
 * @param squareM2 - square of the plan distance between them [m²], 0 or more
 * @returns distance to the power of 2H [m to the power of 1.5]
 */
export function unitVariogram(squareM2: number): number {
  // The power 2H/2 = 3/4 by two square roots: several times quicker than Math.pow, and this runs for every cell.
  return Math.sqrt(squareM2 * Math.sqrt(squareM2))
}

/** A place on the ground with its weight in a sum of levels. */
export interface WeightedPlace {
  readonly xM: number
  readonly yM: number
  readonly weight: number
}

/**
 * Variance of a sum of levels whose weights add up to 0, on ground whose coefficient is 1: the law of intrinsic random
 * functions, Var(Σ λZ) = -ΣΣ λλγ.
 *
 * @param places - places with their weights, which must add up to 0
 * @returns variance [m² for each unit of the coefficient], 0 or more
 * @see Journel & Huijbregts 1978, Mining Geostatistics, chapter II
 */
export function unitVariance(places: readonly WeightedPlace[]): number {
  let sum = 0
  for (const [at, one] of places.entries())
    for (let next = at + 1; next < places.length; next++) {
      const other = places[next]!
      const [x, y] = [other.xM - one.xM, other.yM - one.yM]
      sum += one.weight * other.weight * unitVariogram(x * x + y * y)
    }
  return Math.max(0, -2 * sum)
}
