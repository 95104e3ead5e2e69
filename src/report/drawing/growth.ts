import type { Plant } from '#core/plants'

/** The table's own measure: `yearsToMature` is the time to this share of the spread. */
const SHARE_AT_MATURITY = 0.9

/**
 * Share of its final size that a plant has reached, from the planted unit on: quick at first, then ever slower.
 *
 * @param plant - row of the plant table
 * @param years - years since planting [a], 0 or more
 * @returns share of the final size, 0 to 1
 */
export function grownShare(plant: Plant, years: number): number {
  if (!(years >= 0)) throw new RangeError(`grownShare: years must be 0 or more, got ${years}`)
  const start = Math.min(1, (2 * plant.unitRadiusM) / plant.spreadM)
  return start + (1 - start) * (1 - (1 - SHARE_AT_MATURITY) ** (years / plant.yearsToMature))
}
