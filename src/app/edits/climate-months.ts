import type { Outcome } from '#core/units'
import type { Plan } from '#plan'

type Months = Plan['climate']['months']
export type MonthKey = keyof Months[number]

/** Columns of the twelve months; the sun may be told by either of the last two, or by neither. */
export const monthColumns = [
  { key: 'tMinC', name: 'Mean daily minimum, °C', optional: false },
  { key: 'tMaxC', name: 'Mean daily maximum, °C', optional: false },
  { key: 'rainMm', name: 'Rain, mm', optional: false },
  { key: 'solarMjPerM2', name: 'Radiation, MJ/m² a day', optional: true },
  { key: 'sunshineHours', name: 'Bright sunshine, h a day', optional: true },
] as const satisfies readonly { readonly key: MonthKey; readonly name: string; readonly optional: boolean }[]

/** Twelve figures of one column, some not given. */
export type Column = readonly (number | undefined)[]

/** One column of the twelve months. */
export const columnOf = (months: Months, key: MonthKey): Column => months.map((month) => month[key])

/** The plan with a whole column of months typed in, which makes the climate the person’s own. */
export function setColumn(plan: Plan, key: MonthKey, column: Column): Outcome<Plan> {
  const { climate } = plan
  const months = climate.months.map((month, at) => ({ ...month, [key]: column[at] }))
  return { ok: true, value: { ...plan, climate: { ...climate, from: 'typed', place: undefined, months } } }
}

/** How many of the twelve are given. */
export const givenOf = (column: Column): number => column.filter((value) => value !== undefined).length

/** What tells how much sun comes through the clouds. */
export function sunToldBy(months: Months): string {
  const full = (key: MonthKey) => givenOf(columnOf(months, key)) === months.length
  if (full('solarMjPerM2')) return 'The sun is told by the mean radiation of each month.'
  if (full('sunshineHours')) return 'The sun is told by the hours of bright sunshine.'
  return 'The sun is told by the range between minimum and maximum, which is rougher than radiation or hours of sunshine would be.'
}

/** Figures that were copied from a column of a table; none when there are fewer than two or something else among them. */
export function readColumn(text: string): readonly number[] {
  const cells = text.trim().split(/[\s;]+/)
  const figures = cells.map((cell) => Number(cell.replace(',', '.').replace(/^\u2212/, '-')))
  return cells.length > 1 && figures.every(Number.isFinite) ? figures : []
}
