import { northernTwin, type Month } from '#core/units'
import type { ZoneSunBody } from '#io'
import { counted, dayWords, timeWords } from '#report'
import { clockOf, type ClockSite } from '#plan'

/** A time by the sun, and by the clock where the plan has a time zone. */
export function sunTimeWords(solarHour: number, dayOfYear: number, site: ClockSite, year?: number): string {
  const clock = clockOf(solarHour, dayOfYear, site, year)
  return `${timeWords(solarHour)} by the sun${clock === undefined ? '' : `, ${clock} by the clock`}`
}

/** The last and the first day with sun around the time when it stays away. */
export function darkWords({ kind, lastDay, firstDay, days }: ZoneSunBody['dark'], place: string): string {
  if (kind === 'none') return `${place} has some direct sun on every clear day of the year.`
  if (lastDay === null || firstDay === null || days === null) return `${place} never has direct sun.`
  return `${place} has its last sun on ${dayWords(lastDay)} and its first again on ${dayWords(firstDay)}: ${counted(days, 'day')} without.`
}

/** Months of midsummer and midwinter. */
export function seasonEnds(latitudeDeg: number): readonly [Month, Month] {
  return [northernTwin(JUNE, latitudeDeg), northernTwin(DECEMBER, latitudeDeg)]
}

/** The months that gardeners steer by: midsummer’s, both equinoxes’ and midwinter’s. */
export function steeringMonths(latitudeDeg: number): readonly Month[] {
  const [midsummer, midwinter] = seasonEnds(latitudeDeg)
  return [midsummer, MARCH, SEPTEMBER, midwinter]
}

const MARCH: Month = 2
const JUNE: Month = 5
const SEPTEMBER: Month = 8
const DECEMBER: Month = 11
