import { eachMonth, months, type Month, type Twelve } from '#core/units'
import type { ZoningInput } from './zoning-input.types'

/** The sun of each cell, boiled down to what zones are split by. */
export interface CellSun {
  /** Hours of direct sun in the sunniest month [h]. */
  readonly midsummerHours: Float32Array
  /** Radiation over open level ground, mean of the growing months, per m² of PLAN [ratio]. */
  readonly seasonRatio: Float64Array
}

/**
 * Boils the sun of twelve months down to one figure of hours and one of radiation.
 *
 * @param input - ground, terrain and sun
 * @returns midsummer hours and season ratio of each cell
 */
export function cellSun(input: ZoningInput): CellSun {
  const growing = growingMonths(input.growing)
  const seasonRatio = new Float64Array(input.surface.share.length)
  for (const month of growing)
    input.sunRatio[month].forEach((ratio, cell) => {
      seasonRatio[cell] = (seasonRatio[cell] ?? 0) + ratio / growing.length
    })
  return { midsummerHours: input.sunHours[sunniestMonth(input.surface.share, input.sunHours)], seasonRatio }
}

/**
 * The months that count as the season: those in which plants grow, or the whole year where the climate has none.
 *
 * @param growing - months in which plants grow
 * @returns at least one month
 */
export function growingMonths(growing: readonly Month[]): readonly Month[] {
  return growing.length > 0 ? growing : months
}

// The month with most direct sun on the plot as a whole; the first of equals.
function sunniestMonth(share: Float64Array, sunHours: Twelve<Float32Array>): Month {
  const sums = eachMonth((month) =>
    share.reduce((sum, part, cell) => (part > 0 ? sum + part * (sunHours[month][cell] ?? 0) : sum), 0),
  )
  return months.reduce((best, month) => (sums[month] > sums[best] ? month : best), months[0] ?? 0)
}
