import type { Outcome, Problem } from '#core/units'
import Papa from 'papaparse'
import { cellsOf, delimiterOf, type Delimiter } from './table-delimiter'
import { looksNumeric, numberStyleOf, type NumberStyle } from './table-numbers'

/** A pasted table or CSV file, read as text: the last row of words before the figures names the columns. */
export interface TextTable extends NumberStyle {
  readonly columns: readonly string[]
  /** Whether the columns are named by the table, and not by us. */
  readonly named: boolean
  readonly rows: readonly (readonly string[])[]
  /** Row of the file in which each row stands, counted from 1. */
  readonly lines: readonly number[]
  /** Lines that hold no row: titles and remarks above and between. */
  readonly leftOut: readonly number[]
}

/** Most rows read from one table. */
const MOST_ROWS = 200_000
/** Most columns of a table. */
const MOST_COLUMNS = 200

/** Lines that are remarks of whoever wrote the file. */
const REMARK = /^\s*(#|\/\/|!|%|\*|rem\s)/i

/**
 * Reads a table from text: CSV, tab-separated, semicolons, bars or spaces; with or without a heading row.
 *
 * @param text - the file or what was pasted
 * @returns columns and rows, or the problems
 */
export function readTextTable(text: string): Outcome<TextTable> {
  const clean = text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n')
  const remarks: number[] = []
  const filled = rowsOf(clean, delimiterOf(clean)).filter(({ cells, line, remark }) => {
    if (remark) remarks.push(line)
    return !remark && cells.some((cell) => cell !== '')
  })
  if (filled.length === 0) return refuse('the table is empty', 'Paste at least one row of figures.')
  if (filled.length > MOST_ROWS)
    return refuse(`the table has more than ${MOST_ROWS} rows`, 'Thin it out, or cut it to the plot.')
  if (filled.some(({ cells }) => cells.length > MOST_COLUMNS))
    return refuse(
      `a row has more than ${MOST_COLUMNS} columns`,
      'Check that the file is a table with one point a line.',
    )
  return { ok: true, value: tableOf(filled, remarks) }
}

interface TableRow {
  readonly cells: readonly string[]
  readonly line: number
  readonly remark: boolean
}

function rowsOf(text: string, delimiter: Delimiter): TableRow[] {
  // Quoted cells may hold line ends; only then must the whole be parsed as one.
  if (delimiter !== ' ' && text.includes('"'))
    return Papa.parse<string[]>(text, { delimiter, skipEmptyLines: false }).data.map((cells, index) => ({
      cells: cells.map((cell) => cell.trim()),
      line: index + 1,
      remark: REMARK.test(cells[0] ?? ''),
    }))
  return text
    .split('\n')
    .map((line, index) => ({ cells: cellsOf(line, delimiter), line: index + 1, remark: REMARK.test(line) }))
}

function tableOf(filled: readonly TableRow[], remarks: readonly number[]): TextTable {
  const headingAt = headingOf(filled)
  const heading = headingAt < 0 ? undefined : filled[headingAt]
  const firstFigure = filled.findIndex(({ cells }) => cells.some(looksNumeric))
  const start = heading ? headingAt + 1 : Math.max(0, firstFigure)
  const body = filled.slice(start)
  const rows = body.filter(holdsFigures)
  const strayed = [
    ...filled.slice(0, heading ? headingAt : start),
    ...body.filter((row) => !holdsFigures(row)),
  ]
  const width = rows.slice(0, WIDTH_FROM).reduce((widest, { cells }) => Math.max(widest, cells.length), 0)
  return {
    columns: heading?.cells ?? Array.from({ length: width }, (_, at) => `column ${at + 1}`),
    named: heading !== undefined,
    rows: rows.map(({ cells }) => cells),
    lines: rows.map(({ line }) => line),
    leftOut: [...remarks, ...strayed.map(({ line }) => line)].sort((one, other) => one - other),
    ...numberStyleOf(rows.flatMap(({ cells }) => cells)),
  }
}

/** A short row without any figure is a remark; a long one is a point with something missing, which is told. */
const holdsFigures = ({ cells }: TableRow): boolean => cells.length > 2 || cells.some(looksNumeric)

/** Rows that the number of unnamed columns is told from. */
const WIDTH_FROM = 1000

/**
 * The heading: the first row of words that is as wide as the rows of figures, else the row of words straight above
 * them; -1 when there is none.
 */
function headingOf(filled: readonly TableRow[]): number {
  const figures = filled.findIndex(({ cells }) => cells.filter(looksNumeric).length >= 2)
  if (figures < 0) return isHeading(filled[0]) ? 0 : -1
  const width = filled[figures]?.cells.length
  const above = filled.slice(0, figures)
  const fitting = above.findIndex((row) => isHeading(row) && row.cells.length === width)
  if (fitting >= 0) return fitting
  return isHeading(above.at(-1)) ? figures - 1 : -1
}

const isHeading = (row: TableRow | undefined): boolean =>
  row !== undefined && row.cells.length >= 2 && !row.cells.some(looksNumeric)

function refuse(what: string, mend: string): Outcome<never> {
  const problem: Problem = { where: 'table', what: `${what.charAt(0).toUpperCase()}${what.slice(1)}.`, mend }
  return { ok: false, problems: [problem] }
}
