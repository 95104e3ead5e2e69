import type { ScoreRules } from './score-rules.schema'

/**
 * A wetness score on the plants' moisture scale.
 *
 * @param wetness - wetness score [points of 100], 0 to 100
 * @param rules - the tables of data/rules
 * @returns moisture class, 1 (arid) to 12 (deep water); land reaches 10
 * @throws RangeError when the score is outside 0 to 100
 */
export function moistureClassOf(wetness: number, rules: ScoreRules): number {
  if (!(wetness >= 0 && wetness <= 100))
    throw new RangeError(`moistureClassOf: wetness must be 0 to 100, got ${wetness}`)
  return Math.max(...rules.moistureScale.filter((row) => row.fromScore <= wetness).map((row) => row.class))
}

/**
 * Hours of direct sun on the plants' light scale.
 *
 * @param midsummerSunHours - direct sun on a clear midsummer day [h], 0 to 24
 * @param rules - the tables of data/rules
 * @returns light class, 1 (deepest shade) to 9 (full sun all day)
 * @throws RangeError when the hours are outside 0 to 24
 */
export function lightClassOf(midsummerSunHours: number, rules: ScoreRules): number {
  if (!(midsummerSunHours >= 0 && midsummerSunHours <= 24))
    throw new RangeError(`lightClassOf: midsummerSunHours must be 0 to 24, got ${midsummerSunHours}`)
  const rows = rules.lightScale.filter((row) => midsummerSunHours <= row.upToHours)
  return Math.min(...rows.map((row) => row.class))
}
