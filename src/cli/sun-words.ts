import { daysInMonth, monthNames, months, type Month } from '#core/units'
import { clockOf, type ClockSite } from '#plan'

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
