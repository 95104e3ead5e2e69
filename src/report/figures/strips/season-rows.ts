import { monthNames, months, northernTwin, type Month, type Twelve } from '#core/units'

/** A row of a matrix down the slope: one month, or one season. */
export interface TimeRow {
  readonly key: string
  readonly name: string
  /** One letter, for narrow drawings. */
  readonly short: string
  readonly months: readonly Month[]
}

export type TimeStep = 'months' | 'seasons'

/** The seasons by the northern month, each of three months. */
const seasons = [
  { name: 'winter', north: [11, 0, 1] },
  { name: 'spring', north: [2, 3, 4] },
  { name: 'summer', north: [5, 6, 7] },
  { name: 'autumn', north: [8, 9, 10] },
] as const

/** Twelve rows or four; seasons are those of the plot's own half of the earth. */
export function timeRows(step: TimeStep, latitudeDeg: number): TimeRow[] {
  if (step === 'months')
    return months.map((month) => {
      const name = monthNames[month].slice(0, 3)
      return { key: name, name, short: name.slice(0, 1), months: [month] }
    })
  return seasons.map(({ name, north }) => ({
    key: name,
    name,
    short: name.slice(0, 2),
    months: months.filter((month) => isOneOf(north, northernTwin(month, latitudeDeg))),
  }))
}

function isOneOf(group: readonly number[], month: Month): boolean {
  return group.includes(month)
}

export function sumOf(values: Twelve<number>, row: TimeRow): number {
  return row.months.reduce<number>((total, month) => total + values[month], 0)
}

export function meanOf(values: Twelve<number>, row: TimeRow): number {
  return sumOf(values, row) / row.months.length
}
