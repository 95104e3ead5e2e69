import { representativeDays } from '#core/sun'
import type { Month } from '#core/units'
import { dayWords } from '../../words/day-words'

/** A day whose sun path is drawn. */
export interface PathDay {
  readonly key: 'midsummer' | 'equinox' | 'midwinter' | 'picked'
  readonly dayOfYear: number
  /** What it is called, with its date. */
  readonly words: string
  /** The day that was asked for. */
  readonly picked: boolean
}

/** Days that gardeners steer by: 21 June, 21 December, 20 March, 23 September [d]. */
const SOLSTICE = { june: 172, december: 355 }
const EQUINOX = { march: 79, september: 266 }

/** Days closer together than this draw one path [d]: the sun then moves by less than its own width near a solstice. */
const SAME_PATH_DAYS = 7

/** The days that gardeners steer by; the south turns round, and the equinox is the one nearer to the day asked for. */
export function steeringDays(latitudeDeg: number, dayOfYear: number): readonly Omit<PathDay, 'picked'>[] {
  const south = latitudeDeg < 0
  const [june, december] = south
    ? (['midwinter', 'midsummer'] as const)
    : (['midsummer', 'midwinter'] as const)
  const nearMarch = daysBetween(dayOfYear, EQUINOX.march) <= daysBetween(dayOfYear, EQUINOX.september)
  const equinox = nearMarch ? EQUINOX.march : EQUINOX.september
  const days = [
    { key: june, dayOfYear: SOLSTICE.june },
    { key: 'equinox', dayOfYear: equinox },
    { key: december, dayOfYear: SOLSTICE.december },
  ] as const
  return days.map((day) => ({ ...day, words: `${day.key}, ${dayWords(day.dayOfYear)}` }))
}

/** The paths of a figure: midsummer, equinox, midwinter and the day asked for; alike ones once. */
export function pathDays(latitudeDeg: number, dayOfYear: number): readonly PathDay[] {
  const steering = steeringDays(latitudeDeg, dayOfYear)
  const same = steering.find((day) => day.dayOfYear === dayOfYear)
  if (same) return steering.map((day) => ({ ...day, picked: day === same }))
  const others = steering.filter((day) => daysBetween(day.dayOfYear, dayOfYear) >= SAME_PATH_DAYS)
  const picked = { key: 'picked', dayOfYear, words: dayWords(dayOfYear), picked: true } as const
  return [...others.map((day) => ({ ...day, picked: false })), picked]
}

/** The day drawn for a month: its solstice or equinox, else the day that stands for the month. */
export function dayOfMonth(month: Month): number {
  const steering = { 2: EQUINOX.march, 5: SOLSTICE.june, 8: EQUINOX.september, 11: SOLSTICE.december }
  return (steering as Partial<Record<Month, number>>)[month] ?? representativeDays[month]
}

function daysBetween(one: number, other: number): number {
  const apart = Math.abs(one - other)
  return Math.min(apart, 365 - apart)
}
