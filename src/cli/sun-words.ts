import { daysInMonth, monthNames, months, northernTwin, type Month } from '#core/units'
import type { ZoneSunBody } from '#io'
import { counted } from '#report'
import { clockOf, type ClockSite } from '#plan'
import { plain } from './text-layout'

const MINUTES_PER_H = 60

/** A day of a year without a leap day as a date, such as 21 March. */
export function dateWords(dayOfYear: number): string {
  const month = monthOfDay(dayOfYear)
  const before = daysInMonth.slice(0, month).reduce<number>((sum, days) => sum + days, 0)
  return `${dayOfYear - before} ${monthNames[month]}`
}

/** Month of a day of a year without a leap day. */
export function monthOfDay(dayOfYear: number): Month {
  let last = 0
  for (const month of months) {
    last += daysInMonth[month]
    if (dayOfYear <= last) return month
  }
  throw new RangeError(`monthOfDay: the day of the year must be 1 to 365, got ${dayOfYear}`)
}

/** Hours and minutes of a time of day [h], rounded to the minute. */
export function timeWords(hour: number): string {
  const minutes = Math.round(hour * MINUTES_PER_H)
  const two = (part: number) => String(part).padStart(2, '0')
  return `${two(Math.floor(minutes / MINUTES_PER_H))}:${two(minutes % MINUTES_PER_H)}`
}

/** A time by the sun, and by the clock where the plan has a time zone. */
export function sunTimeWords(solarHour: number, dayOfYear: number, site: ClockSite, year?: number): string {
  const clock = clockOf(solarHour, dayOfYear, site, year)
  return `${timeWords(solarHour)} by the sun${clock === undefined ? '' : `, ${clock} by the clock`}`
}

/** When the sun leaves a place in winter and comes back. */
export function darkWords({ kind, lastDay, firstDay, days }: ZoneSunBody['dark'], place: string): string {
  if (kind === 'none') return `${place} has some direct sun on every clear day of the year.`
  if (lastDay === null || firstDay === null || days === null) return `${place} never has direct sun.`
  return `${place} has its last sun on ${dateWords(lastDay)} and its first again on ${dateWords(firstDay)}: ${plain(counted(days, 'day'))} without.`
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
