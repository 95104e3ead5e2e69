import type { Twelve } from '#core/units'
import type { MonthClimate } from './climate.types'

// How far the coldest night of a usual year falls below the mean minimum of the coldest month. Own judgement: nights
// fall further in lands with cold winters and hot summers than by the ocean.
/** Gap by the ocean, and the yearly swing of monthly means up to which it holds [°C]. */
const OCEANIC = { gapC: 7, swingC: 10 }
/** Gap deep inland, and the yearly swing from which it holds [°C]. */
const CONTINENTAL = { gapC: 14, swingC: 26 }

/**
 * Lowest temperature to expect in a usual winter, guessed from monthly normals. Weak: give or take 5 °C. A valley floor
 * or frost pocket lies below it, a city or a shore above; a figure from the nearest weather station is better.
 *
 * @param year - the twelve months at the plot
 * @returns mean lowest temperature of the year [°C]
 */
export function hardWinterC(year: Twelve<MonthClimate>): number {
  const means = year.map((month) => month.tMeanC)
  const swingC = Math.max(...means) - Math.min(...means)
  const inland = Math.min(1, Math.max(0, (swingC - OCEANIC.swingC) / (CONTINENTAL.swingC - OCEANIC.swingC)))
  const gapC = OCEANIC.gapC + inland * (CONTINENTAL.gapC - OCEANIC.gapC)
  return Math.min(...year.map((month) => month.tMinC)) - gapC
}
