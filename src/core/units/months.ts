/** Month of the year, 0 (January) to 11 (December). */
export type Month = 0 | 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9 | 10 | 11

/** The twelve months in order. */
export const months: readonly Month[] = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11]

/** English month names, January first. */
export const monthNames = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const

/** Days of each month in a year that is not a leap year [d]. */
export const daysInMonth = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const

/** Any twelve values, January first. */
export type Twelve<T> = readonly [T, T, T, T, T, T, T, T, T, T, T, T]

/**
 * Twelve values made month by month.
 *
 * @param make - gives the value of one month
 * @returns twelve values, January first
 */
export function eachMonth<T>(make: (month: Month) => T): Twelve<T> {
  return [
    make(0),
    make(1),
    make(2),
    make(3),
    make(4),
    make(5),
    make(6),
    make(7),
    make(8),
    make(9),
    make(10),
    make(11),
  ]
}

/** Latitudes this close to the equator have no summer of their own [°]. */
const TROPIC_BELT_DEG = 5

/**
 * The month that has the same season at the same latitude north of the equator.
 *
 * @param month - month of the year, 0 to 11
 * @param latitudeDeg - latitude [°], north positive, -90 to 90
 * @returns the month itself north of 5° south; six months on further south
 */
export function northernTwin(month: Month, latitudeDeg: number): Month {
  return latitudeDeg < -TROPIC_BELT_DEG ? (((month + 6) % 12) as Month) : month
}
