import type { Outcome, Problem } from '#core/units'
import type { Book } from '#core/booking'
import Papa from 'papaparse'
import {
  bookColumns,
  columnNames,
  neededColumns,
  type BookColumn,
  type FoundColumn,
} from './field-book-columns'

/** A field book as a table: what its columns hold, and its rows. */
export interface BookTable {
  readonly columns: readonly FoundColumn[]
  /** Headings that were not understood. */
  readonly ignoredColumns: readonly string[]
  readonly rows: readonly BookRow[]
  /** Lines of the file that hold no row: titles, sums, remarks. */
  readonly leftOut: readonly number[]
}

export interface BookRow {
  readonly cells: readonly string[]
  /** Line of the file, counted from 1. */
  readonly line: number
}

/** Most lines of a field book. */
const MOST_LINES = 5000
/** Longest text read [characters]. */
const LONGEST_TEXT = 2_000_000
/** Lines that the heading is looked for in. */
const HEADING_WITHIN = 20
const delimiters = ['\t', ';', ',', '|', ' '] as const
/** Rows of a book that are its sums, not its readings. */
const sumRow = /^(sums?|totals?|Σ|∑|checks?|differences?)\b/i

/**
 * Takes a field book apart. Its columns must be named; their order and what else stands in the file do not matter.
 *
 * @param text - a CSV file or a pasted table
 * @param kind - kind of field book
 * @returns columns and rows, or the problem
 */
export function readBookTable(text: string, kind: Book['kind']): Outcome<BookTable> {
  if (text.length > LONGEST_TEXT) return refuse(`The text is longer than ${LONGEST_TEXT} characters.`, FEWER)
  const clean = text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n')
  const tried = delimiters.flatMap((delimiter) => headed(rowsOf(clean, delimiter), kind) ?? [])
  const [best] = tried.sort((one, other) => other.columns.length - one.columns.length)
  if (!best) return refuse('No row names the columns.', askFor(kind))
  const table = tableOf(best)
  if (table.rows.length === 0) return refuse('There is no row of readings.', 'Write them below the headings.')
  if (table.rows.length > MOST_LINES) return refuse(`It has more than ${MOST_LINES} lines.`, FEWER)
  return { ok: true, value: table }
}

const FEWER = 'Cut it into several books.'

function rowsOf(text: string, delimiter: (typeof delimiters)[number]): BookRow[] {
  const rows =
    delimiter === ' '
      ? text.split('\n').map((line) => line.trim().split(/\s+/))
      : Papa.parse<string[]>(text, { delimiter }).data
  return rows.map((cells, at) => ({ cells: cells.map(cellText), line: at + 1 }))
}

/** Our own files hold an apostrophe before text that a spreadsheet would reckon with. */
const cellText = (cell: string): string => cell.trim().replace(/^'(?=[-=+@])/, '')

interface Headed {
  readonly rows: readonly BookRow[]
  readonly headingAt: number
  readonly columns: readonly FoundColumn[]
}

function headed(rows: readonly BookRow[], kind: Book['kind']): Headed | undefined {
  for (const [headingAt, { cells }] of rows.slice(0, HEADING_WITHIN).entries()) {
    const columns = bookColumns(cells, kind)
    const holds = columns.map((column) => column.holds)
    if (neededColumns[kind].every((needed) => holds.includes(needed))) return { rows, headingAt, columns }
  }
  return undefined
}

function tableOf({ rows, headingAt, columns }: Headed): BookTable {
  const below = rows.slice(headingAt + 1).filter(({ cells }) => cells.some((cell) => cell !== ''))
  const kept = below.filter((row) => holdsReadings(row, columns))
  const above = rows.slice(0, headingAt).filter(({ cells }) => cells.some((cell) => cell !== ''))
  const known = columns.map(({ at }) => at)
  return {
    columns,
    ignoredColumns: (rows[headingAt]?.cells ?? []).filter((cell, at) => cell !== '' && !known.includes(at)),
    rows: kept,
    leftOut: [...above, ...below.filter((row) => !kept.includes(row))].map(({ line }) => line),
  }
}

const words: readonly BookColumn[] = ['mark', 'remark']

function holdsReadings({ cells }: BookRow, columns: readonly FoundColumn[]): boolean {
  if (sumRow.test(cells.find((cell) => cell !== '') ?? '')) return false
  return columns.some(({ holds, at }) => !words.includes(holds) && (cells[at] ?? '') !== '')
}

function askFor(kind: Book['kind']): string {
  const names = neededColumns[kind].map((column) => columnNames[column])
  return `Put a row of headings above the readings; this kind of book needs ${names.join(' and ')}.`
}

function refuse(what: string, mend: string): Outcome<never> {
  const problem: Problem = { where: 'field book', what, mend }
  return { ok: false, problems: [problem] }
}
