/** Density of stones and of soil minerals [t/m³]: Saxton & Rawls 2006. */
const MINERAL_DENSITY = 2.65

/**
 * How much slower a stony soil lets water through than its fine earth.
 *
 * @param stonesShare - stones over 2 mm, by volume [share], 0 to 0.9
 * @param densityTPerM3 - dry density of the fine earth [t/m³], 0.5 to 2.65
 * @returns conductivity of the whole over that of the fine earth [ratio], above 0 to 1
 * @throws RangeError when an input is outside its range
 * @see Saxton & Rawls 2006, Soil Sci. Soc. Am. J. 70:1569-1578, gravel equations, from memory
 */
export function stoneSlowing(stonesShare: number, densityTPerM3: number): number {
  if (!(stonesShare >= 0 && stonesShare <= 0.9))
    throw new RangeError(`stoneSlowing: stonesShare must be 0 to 0.9, got ${stonesShare}`)
  if (!(densityTPerM3 >= 0.5 && densityTPerM3 <= MINERAL_DENSITY))
    throw new RangeError(`stoneSlowing: densityTPerM3 must be 0.5 to 2.65, got ${densityTPerM3}`)
  const density = densityTPerM3 / MINERAL_DENSITY
  const byWeight = stonesShare / (density + stonesShare * (1 - density))
  return (1 - byWeight) / (1 - byWeight * (1 - 1.5 * density))
}
