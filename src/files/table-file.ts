import type { LevelsSurvey } from '#core/survey'
import type { Outcome } from '#core/units'
import {
  guessLevelColumns,
  headedColumns,
  headingParts,
  levelsFromTable,
  readTextTable,
  usualOrders,
  type LevelColumns,
  type TextTable,
} from '#io'
import { doubtsOf } from './doubts-of'
import { unitOfWord } from './length-unit'
import type { Doubt, LengthUnit, ReadTable, SurveyPart, SurveyRead } from './survey-read.types'

/**
 * Reads a table of points: CSV, tabs, semicolons, blanks, XYZ. Which column holds what is our best reading, told by the
 * headings where they name east, north and level, and asked where they do not.
 *
 * @param text - the file
 * @param columns - which column holds what, where the person has said so already
 * @returns one part of points, with the table it came from; or every line that cannot be used
 */
export function readTableFile(text: string, columns?: LevelColumns): Outcome<SurveyRead> {
  const table = readTextTable(text)
  if (!table.ok) return table
  if (columns) return readWith({ ...table.value, reading: columns, headed: true, orders: [] })
  const headed = headedColumns(table.value.columns) !== undefined
  const orders = headed ? [] : usualOrders(table.value)
  return readWith({ ...table.value, reading: guessLevelColumns(table.value), headed, orders })
}

/**
 * The same table read with other columns.
 *
 * @param read - a table read before
 * @param columns - which column holds what, as the person says
 * @returns the table with its points anew; no longer in doubt about its columns
 */
export function readWithColumns(read: SurveyRead, columns: LevelColumns): Outcome<SurveyRead> {
  if (!read.table) return { ok: true, value: read }
  const anew = readWith({ ...read.table, reading: columns, headed: true })
  return anew.ok
    ? { ok: true, value: { ...anew.value, doubts: [...anew.value.doubts, ...doubtsOf(anew.value)] } }
    : anew
}

function readWith(table: ReadTable): Outcome<SurveyRead> {
  const levels = levelsFromTable(table, table.reading)
  if (!levels.ok) return levels
  const inDegrees = headedInDegrees(table)
  const units = unitsOf(table)
  return {
    ok: true,
    value: {
      format: 'table',
      parts: [pointsPart(levels.value.points)],
      unit: inDegrees ? units.level : units.plan,
      levelUnit: inDegrees ? undefined : units.level,
      crs: inDegrees ? { name: 'longitude and latitude', epsg: 4326, definition: undefined } : undefined,
      ...(inDegrees ? { inDegrees } : {}),
      table,
      notes: notesOf(table, inDegrees),
      doubts: tableDoubts(table),
    },
  }
}

function pointsPart(points: LevelsSurvey['points']): SurveyPart {
  return {
    id: 'points',
    name: 'Points',
    kind: 'points',
    points,
    faces: [],
    breaklines: [],
    boundary: undefined,
    grid: undefined,
  }
}

/** Only headings that say longitude and latitude make degrees of two columns. */
function headedInDegrees({ columns, reading }: ReadTable): boolean {
  const word = (at: number) => headingParts(columns[at] ?? '').word
  return /^(lon|lng)/i.test(word(reading.east)) && /^lat/i.test(word(reading.north))
}

function unitsOf({ columns, named, reading }: ReadTable): {
  readonly plan: LengthUnit | undefined
  readonly level: LengthUnit | undefined
} {
  const unit = (at: number) => (named ? unitOfWord(headingParts(columns[at] ?? '').unit ?? '') : undefined)
  const [east, north, level] = [unit(reading.east), unit(reading.north), unit(reading.level)]
  const plan = east === north ? east : undefined
  return { plan, level: level === plan ? undefined : level }
}

/** Lines named in one sentence at most. */
const LINES_NAMED = 8

function notesOf(table: TextTable, inDegrees: boolean): string[] {
  const { leftOut, decimalMark, thousandsMark } = table
  const named = leftOut.slice(0, LINES_NAMED).join(', ')
  const more = leftOut.length > LINES_NAMED ? ` and ${leftOut.length - LINES_NAMED} more` : ''
  return [
    ...(leftOut.length > 0 ? [`Titles and remarks were not read: line ${named}${more}.`] : []),
    ...(decimalMark === ',' ? ['Commas were read as decimal marks.'] : []),
    ...(thousandsMark ? [`“${thousandsMark}” was read as a mark between thousands.`] : []),
    ...(inDegrees ? ['Longitude and latitude are taken to be WGS 84; they are brought to metres.'] : []),
  ]
}

function tableDoubts(table: ReadTable): Doubt[] {
  return [...columnDoubts(table), ...decimalDoubts(table)]
}

function columnDoubts({ headed, orders, reading, columns }: ReadTable): Doubt[] {
  if (headed) return []
  const names = orders.map(({ name }) => name).join(', ')
  const name = (at: number) => columns[at] ?? `column ${at + 1}`
  return [
    {
      about: 'columns',
      where: 'columns',
      what: `No heading says which column is which. East is read from “${name(reading.east)}”, north from “${name(reading.north)}”, level from “${name(reading.level)}”.`,
      mend: `Say which column holds what${names === '' ? '' : `; usual orders that fit are ${names} (P point, N north, E east, Z level, D description)`}.`,
    },
  ]
}

function decimalDoubts({ unclear, decimalMark }: ReadTable): Doubt[] {
  if (!unclear) return []
  const meaning = decimalMark === ',' ? 'decimal marks' : 'marks between thousands'
  return [
    {
      about: 'decimals',
      where: 'figures',
      what: `Commas could be decimal marks or stand between thousands; they were read as ${meaning}.`,
      mend: 'Look at a level you know. If it is wrong, write the file anew with decimal points and nothing between thousands.',
    },
  ]
}
