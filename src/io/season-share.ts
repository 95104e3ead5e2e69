import { daysInMonth, eachMonth, months, type Month, type Twelve } from '#core/units'
import { growingMonths } from '#core/zones'
import type { Findings } from '#plan'

/** The months of a growing season and how each counts. */
export interface Season {
  readonly months: readonly Month[]
  /** Part that a watt-hour a day has of the season's light on open level ground [1 per Wh/m² and day], for each month. */
  readonly weights: Twelve<number>
}

/**
 * The growing season of a plan, weighed against open level ground; the whole year where nothing grows.
 *
 * @param findings - climate and sun
 * @returns its months and weights; undefined where the season has no light at all
 */
export function seasonOf({ sun, climate }: Pick<Findings, 'sun' | 'climate'>): Season | undefined {
  const season = growingMonths(months.filter((month) => climate[month].growing))
  const openWh = season.reduce<number>(
    (sum, month) => sum + daysInMonth[month] * sun.openLevel[month].usualWhPerM2,
    0,
  )
  if (openWh === 0) return undefined
  return { months: season, weights: eachMonth((month) => daysInMonth[month] / openWh) }
}

/**
 * Radiation of the growing season over that of open level ground, under the usual sky.
 *
 * @param season - from `seasonOf`
 * @param usualWhPerM2 - radiation of each month's mean day [Wh/m² of slope]
 * @returns share, per m² of slope; 1 where the season has no light, as open ground has none either
 */
export function seasonShareOf(season: Season | undefined, usualWhPerM2: Twelve<number>): number {
  if (season === undefined) return 1
  return season.months.reduce<number>((sum, month) => sum + season.weights[month] * usualWhPerM2[month], 0)
}
