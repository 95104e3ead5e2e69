import { daysInMonth, months } from '#core/units'
import type { Arguments } from './arguments'
import { UsageError } from './exit'

/** A date as it was given. */
export interface GivenDate {
  /** Day of a year without a leap day, 1 to 365; 29 February counts as the 28th. */
  readonly dayOfYear: number
  /** The year, where the date was given in full. */
  readonly year: number | undefined
}

/**
 * The date that --date gives.
 *
 * @param given - the command line
 * @returns the date, written MM-DD or YYYY-MM-DD; undefined when it was not given
 */
export function dateGiven(given: Arguments): GivenDate | undefined {
  const date = given.text('date')
  if (date === undefined) return undefined
  const [, yearText, monthText, dayText] = /^(?:(\d{4})-)?(\d\d)-(\d\d)$/.exec(date) ?? []
  const month = months.find((one) => one + 1 === Number(monthText))
  const day = Number(dayText)
  if (month === undefined || !(day >= 1 && day <= lastDay(month, yearText)))
    throw new UsageError(`--date needs a date as MM-DD or YYYY-MM-DD, such as 06-21; not “${date}”.`)
  const counted = Math.min(day, daysInMonth[month])
  return {
    dayOfYear: daysInMonth.slice(0, month).reduce<number>((sum, days) => sum + days, counted),
    year: yearText === undefined ? undefined : Number(yearText),
  }
}

const FEBRUARY = 1

function lastDay(month: (typeof months)[number], yearText: string | undefined): number {
  const year = Number(yearText)
  const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0)
  return daysInMonth[month] + (month === FEBRUARY && leap ? 1 : 0)
}
