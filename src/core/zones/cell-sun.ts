import { eachMonth, months, type Month, type Twelve } from '#core/units'
import type { ZoningInput } from './zoning-input.types'

/** The sun of each cell, boiled down to what zones are split by. */
export interface CellSun {
  /** Hours of direct sun in the sunniest month [h]. */
  readonly midsummerHours: Float32Array
  /** Radiation over open level ground, mean of the season's months, per m² of PLAN [ratio]: low sun parts zones too. */
  readonly seasonRatio: Float64Array
}

/**
 * Boils the sun of twelve months down to one figure of hours and one of radiation.
 *
 * @param input - ground, terrain and sun
 * @returns midsummer hours and season ratio of each cell
 */
export function cellSun(input: ZoningInput): CellSun {
  const seasonRatio = new Float64Array(input.surface.share.length)
  const growing = months.filter((month) => input.season[month] > 0)
  for (const month of growing) addPart(seasonRatio, input.sunRatio[month], 1 / growing.length)
  return { midsummerHours: input.sunHours[sunniestMonth(input.surface.share, input.sunHours)], seasonRatio }
}

// The month with most direct sun on the plot as a whole; the first of equals.
function sunniestMonth(share: Float64Array, sunHours: Twelve<Float32Array>): Month {
  const sums = eachMonth((month) => weightedSum(share, sunHours[month]))
  return months.reduce((best, month) => (sums[month] > sums[best] ? month : best), months[0] ?? 0)
}

function addPart(sums: Float64Array, values: Float32Array, weight: number): void {
  for (let cell = 0; cell < sums.length; cell++) sums[cell] = (sums[cell] ?? 0) + weight * (values[cell] ?? 0)
}

function weightedSum(share: Float64Array, values: Float32Array): number {
  let sum = 0
  for (let cell = 0; cell < share.length; cell++) {
    const part = share[cell] ?? 0
    if (part > 0) sum += part * (values[cell] ?? 0)
  }
  return sum
}
