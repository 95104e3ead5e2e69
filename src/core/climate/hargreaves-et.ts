/** Water evaporated by a unit of energy [mm m²/MJ] (FAO-56 eq. 20). */
const MM_PER_MJ = 0.408

/**
 * Reference evapotranspiration from temperature alone, to check the fuller method by.
 *
 * @param tMinC - mean daily minimum [°C]
 * @param tMaxC - mean daily maximum [°C], not below the minimum
 * @param extraterrestrialMjPerM2 - radiation above the air [MJ/m² a day], 0 or more
 * @returns reference evapotranspiration [mm/d], never below 0
 * @throws RangeError when the maximum is below the minimum
 * @see FAO-56 (Allen et al. 1998), eq. 52, after Hargreaves & Samani 1985
 */
export function hargreavesMmPerDay(tMinC: number, tMaxC: number, extraterrestrialMjPerM2: number): number {
  if (!(tMaxC >= tMinC))
    throw new RangeError(`hargreavesMmPerDay: maximum [°C] must be at least ${tMinC}, got ${tMaxC}`)
  const tMeanC = (tMinC + tMaxC) / 2
  return Math.max(
    0,
    0.0023 * (tMeanC + 17.8) * Math.sqrt(tMaxC - tMinC) * extraterrestrialMjPerM2 * MM_PER_MJ,
  )
}
