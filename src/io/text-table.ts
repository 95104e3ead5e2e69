import type { Outcome, Problem } from '#core/units'
import Papa from 'papaparse'

/** A pasted table or CSV file, read as text: the first row of words names the columns. */
export interface TextTable {
  readonly columns: readonly string[]
  readonly rows: readonly (readonly string[])[]
  /** Row of the file in which each row stands, counted from 1. */
  readonly lines: readonly number[]
  /** What was taken to be the decimal mark. */
  readonly decimalMark: '.' | ','
}

/** Most rows read from one table. */
const MOST_ROWS = 200_000

/**
 * Reads a table from text: CSV, tab-separated, semicolons or spaces; with or without a heading row.
 *
 * @param text - the file or what was pasted
 * @returns columns and rows, or the problems
 */
export function readTextTable(text: string): Outcome<TextTable> {
  const clean = text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n')
  const delimiter = delimiterOf(clean)
  const source = delimiter === ' ' ? clean.replace(/[^\S\n]+/g, ' ').replace(/^ | $/gm, '') : clean
  const parsed = Papa.parse<string[]>(source, { delimiter, skipEmptyLines: false })
  const filled = parsed.data
    .map((cells, index) => ({ cells: cells.map((cell) => cell.trim()), line: index + 1 }))
    .filter(({ cells }) => cells.some((cell) => cell !== '') && !cells[0]?.startsWith('#'))
  const [first] = filled
  if (!first) return refuse('the table is empty', 'Paste at least one row of figures.')
  if (filled.length > MOST_ROWS)
    return refuse(`the table has more than ${MOST_ROWS} rows`, 'Thin it out, or cut it to the plot.')
  const headed = first.cells.every((cell) => toNumber(cell, '.') === undefined)
  const body = headed ? filled.slice(1) : filled
  const columns = headed ? first.cells : first.cells.map((_, index) => `column ${index + 1}`)
  return {
    ok: true,
    value: {
      columns,
      rows: body.map(({ cells }) => cells),
      lines: body.map(({ line }) => line),
      decimalMark: delimiter !== ',' && body.some(({ cells }) => cells.some(isDecimalComma)) ? ',' : '.',
    },
  }
}

/**
 * A figure as written, with either decimal mark.
 *
 * @param text - such as "12.5", "-3,25", "4 "
 * @param decimalMark - the table's decimal mark
 * @returns the number, or undefined when the text is not one
 */
export function toNumber(text: string, decimalMark: '.' | ','): number | undefined {
  const plain = (decimalMark === ',' ? text.replace(',', '.') : text).trim().replace(/^\u2212/, '-')
  return /^[-+]?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?$/i.test(plain) ? Number(plain) : undefined
}

function refuse(what: string, mend: string): Outcome<never> {
  const problem: Problem = { where: 'table', what: `${what.charAt(0).toUpperCase()}${what.slice(1)}.`, mend }
  return { ok: false, problems: [problem] }
}

/** Tab before semicolon before comma before spaces; a comma between two digits alone may be a decimal mark. */
function delimiterOf(text: string): string {
  const head = text.split('\n').slice(0, 20).join('\n')
  if (head.includes('\t')) return '\t'
  if (head.includes(';')) return ';'
  if (head.includes(',') && !/^\s*-?\d+,\d+(\s+-?\d+,\d+)+\s*$/m.test(head)) return ','
  return /\S +\S/.test(head) ? ' ' : ','
}

const isDecimalComma = (cell: string): boolean => /^[-+]?\d+,\d+$/.test(cell)
