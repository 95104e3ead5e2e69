import type { Twelve } from '#core/units'

/** Concentration of rain at which the second equation takes over [mm]: Renard & Freimund 1994. */
const TURN_MM = 55

/**
 * Force of a usual year's rain to carry soil off, judged from its months alone.
 *
 * @param rainMm - mean rain of each month [mm], 0 or more
 * @returns erosivity R [MJ mm/(ha h a)], 0 or more
 * @throws RangeError when a month is negative
 * @see Renard & Freimund 1994, J. Hydrol. 157:287-306; equation from memory
 */
export function rainErosivity(rainMm: Twelve<number>): number {
  if (!(Math.min(...rainMm) >= 0))
    throw new RangeError(`rainErosivity: rain must be 0 or more, got ${rainMm.join()}`)
  const yearMm = rainMm.reduce((sum, month) => sum + month, 0)
  if (yearMm === 0) return 0
  const concentrationMm = rainMm.reduce((sum, month) => sum + month ** 2, 0) / yearMm
  return concentrationMm < TURN_MM
    ? 0.07397 * concentrationMm ** 1.847
    : 95.77 - 6.081 * concentrationMm + 0.477 * concentrationMm ** 2
}
