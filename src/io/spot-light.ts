import { daylightHours, extraterrestrialMjPerM2, type MonthNormals } from '#core/climate'
import { representativeDays } from '#core/sun'
import { monthNames, months, type Month } from '#core/units'
import type { SpotCells } from './spot-cells'
import { lightColumns, type FigureColumn } from './spot-columns'

/** What a month's radiation is told by. */
type MonthLight = Pick<MonthNormals, 'solarMjPerM2' | 'sunshineHours'>

/** A month's mean may lie above that of its representative day by this much [ratio]. */
const MOST_OF_DAY = 1.02

/**
 * Sunshine and radiation of a row, where they are given.
 *
 * @param cells - the row
 * @param latitudeDeg - latitude [°]; undefined where that cell is wrong
 * @returns what is known of each month, twelve entries; undefined when a cell is not sound
 */
export function spotLight(
  cells: SpotCells,
  latitudeDeg: number | undefined,
): readonly MonthLight[] | undefined {
  const asked = (columns: readonly FigureColumn[]) =>
    columns.some(({ name }) => cells.text(name) !== undefined)
  const [radiation, sunshine] = [asked(lightColumns.solarMjPerM2), asked(lightColumns.sunshineHours)]
  const read = months.map((month) => ({
    ...(radiation && { solarMjPerM2: solarOf(cells, month, latitudeDeg) }),
    ...(sunshine && { sunshineHours: sunshineOf(cells, month, latitudeDeg) }),
  }))
  const known = read.filter((month): month is MonthLight => !Object.values(month).includes(undefined))
  return known.length === months.length ? known : undefined
}

/** A cell of a month that must not be empty. */
export function neededMonth(cells: SpotCells, column: FigureColumn | undefined): number | undefined {
  if (!column) return undefined
  return cells.text(column.name) === undefined
    ? cells.refuse(column.name, 'This month is missing.', 'Give all twelve months, January first.')
    : cells.figure(column)
}

function solarOf(cells: SpotCells, month: Month, latitudeDeg: number | undefined): number | undefined {
  const column = lightColumns.solarMjPerM2[month]
  const value = neededMonth(cells, column)
  if (column === undefined || value === undefined || latitudeDeg === undefined) return value
  const most = extraterrestrialMjPerM2(latitudeDeg, representativeDays[month])
  if (value <= most * MOST_OF_DAY) return value
  return cells.refuse(
    column.name,
    `${value} MJ/m² a day is more than reaches the top of the air there in ${monthNames[month]}, ${most.toFixed(1)}.`,
    'Give the mean of a day in MJ/m²; kWh/m² times 3.6.',
  )
}

function sunshineOf(cells: SpotCells, month: Month, latitudeDeg: number | undefined): number | undefined {
  const column = lightColumns.sunshineHours[month]
  const value = neededMonth(cells, column)
  if (column === undefined || value === undefined || latitudeDeg === undefined) return value
  const most = daylightHours(latitudeDeg, representativeDays[month])
  if (value <= most * MOST_OF_DAY) return value
  return cells.refuse(
    column.name,
    `${value} h of sunshine a day is more than a day of ${monthNames[month]} has there, ${most.toFixed(1)} h.`,
    'Give hours a day, not hours of the whole month.',
  )
}
