import { daysInMonth, monthNames, months, type Month } from '#core/units'

/** Month and day of the month of a day counted from 1 January without a leap day, 1 to 365. */
export function dateOf(dayOfYear: number): { readonly month: Month; readonly day: number } {
  let day = dayOfYear
  for (const month of months) {
    if (day <= daysInMonth[month]) return { month, day }
    day -= daysInMonth[month]
  }
  return { month: 11, day: daysInMonth[11] }
}

/** A day in words: "21 June". */
export function dayWords(dayOfYear: number): string {
  const { month, day } = dateOf(dayOfYear)
  return `${day} ${monthNames[month]}`
}

/** A time of the day: "06:20". */
export function timeWords(hour: number): string {
  const minutes = Math.round(hour * 60)
  return [Math.floor(minutes / 60), minutes % 60].map((part) => String(part).padStart(2, '0')).join(':')
}

/** Tells the time by the clock from the time by the sun; undefined where no clock is known. */
export type Clock = (solarHour: number, dayOfYear: number) => string | undefined

/** A stretch of a day, by the clock where one is known, else by the sun. */
export function spellWords(
  fromH: number,
  toH: number,
  at: { dayOfYear: number; clock?: Clock | undefined },
): string {
  const [from, to] = [fromH, toH].map((hour) => at.clock?.(hour, at.dayOfYear) ?? timeWords(hour))
  return `${from} to ${to}`
}
