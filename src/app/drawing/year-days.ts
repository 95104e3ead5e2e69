import { daysInMonth, months, type Month } from '#core/units'
import { dateOf } from '#report'

/** Days of a year that is no leap year [d]. */
export const YEAR_DAYS = 365

/** Days that gardeners steer by, as days of the year [d]: 21 June, 21 December, 20 March, 23 September. */
const SOLSTICE = { june: 172, december: 355 }
const EQUINOX = { march: 79, september: 266 }

/** A day to turn to by its name. */
export interface NamedDay {
  readonly name: string
  readonly dayOfYear: number
}

/** Midsummer, the equinoxes and midwinter; the south turns round. */
export function namedDays(latitudeDeg: number): NamedDay[] {
  const south = latitudeDeg < 0
  return [
    { name: 'midsummer', dayOfYear: south ? SOLSTICE.december : SOLSTICE.june },
    { name: 'September equinox', dayOfYear: EQUINOX.september },
    { name: 'midwinter', dayOfYear: south ? SOLSTICE.june : SOLSTICE.december },
    { name: 'March equinox', dayOfYear: EQUINOX.march },
  ]
}

/** Day of the year of a date; a day that the month has not is its last. */
export const dayOf = (month: Month, day: number): number =>
  months.slice(0, month).reduce<number>((sum, before) => sum + daysInMonth[before], 0) +
  Math.min(day, daysInMonth[month])

/** The same day of a month further on or back; at the ends of the year it stays in it. */
export function monthsOn(dayOfYear: number, by: number): number {
  const { month, day } = dateOf(dayOfYear)
  const to = months[month + by]
  if (to !== undefined) return dayOf(to, day)
  return by < 0 ? 1 : YEAR_DAYS
}
