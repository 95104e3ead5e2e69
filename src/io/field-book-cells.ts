import type { WrittenUnit } from '#core/booking'
import type { Problem } from '#core/units'
import { columnNames, type BookColumn, type FoundColumn } from './field-book-columns'
import type { BookRow } from './field-book-table'
import { columnLengthM, columnUnitOf, placeUnitOf, type ColumnUnit } from './field-book-units'

/** Cells of one row by what their column holds, and what is wrong with them. */
export interface RowCells {
  /** Text of a cell, or undefined when it is empty or there is no such column. */
  word(holds: BookColumn): string | undefined
  /** Length of a cell [m]. */
  lengthM(holds: BookColumn): number | undefined
  /** Angle of a cell [°]. */
  angleDeg(holds: BookColumn): number | undefined
  /** Complains of a cell that is needed and empty. */
  miss(holds: BookColumn): void
}

/** A column with the unit its figures are in. */
export interface UnitColumn extends FoundColumn {
  readonly inUnit: ColumnUnit
}

const places: readonly BookColumn[] = ['distance', 'east', 'north', 'hand']

/**
 * Settles the unit of every column: what its heading says, else the book's.
 *
 * @param columns - the columns as found
 * @param unit - what the person says the book is written in, if anything
 * @returns the columns with their units, and every heading that contradicts
 */
export function withUnits(
  columns: readonly FoundColumn[],
  unit: WrittenUnit | undefined,
): { readonly columns: readonly UnitColumn[]; readonly problems: readonly Problem[] } {
  const problems: Problem[] = []
  const settled = columns.map((column) => {
    const usual = places.includes(column.holds) ? placeUnitOf(unit ?? 'm') : (unit ?? 'm')
    const inUnit = column.unit === undefined ? usual : (columnUnitOf(column.unit) ?? usual)
    if (isLength(column)) problems.push(...unitProblems(column, unit))
    return { ...column, inUnit }
  })
  return { columns: settled, problems }
}

const isLength = ({ holds }: FoundColumn): boolean => !['mark', 'remark', 'angle'].includes(holds)

function unitProblems({ unit, heading, holds }: FoundColumn, said: WrittenUnit | undefined): Problem[] {
  if (unit === undefined) return []
  const named = columnUnitOf(unit)
  const where = `heading “${heading}”`
  if (named === undefined)
    return [{ where, what: `“${unit}” is no unit we know.`, mend: 'Write m, cm, mm, ft, ft-in or us-ft.' }]
  const agrees = said === undefined || columnLengthM('1', named) === columnLengthM('1', said)
  return agrees || places.includes(holds)
    ? []
    : [
        {
          where,
          what: `It says ${named}, but the book is said to be in ${said}.`,
          mend: 'Make the two agree.',
        },
      ]
}

/**
 * The cells of a row.
 *
 * @param row - one row of the book
 * @param columns - what the columns hold
 * @param problems - what is wrong is added here
 * @returns ways to read its cells
 */
export function cellsOfRow(row: BookRow, columns: readonly UnitColumn[], problems: Problem[]): RowCells {
  const complain = (holds: BookColumn, what: string, mend: string) =>
    problems.push({ where: `line ${row.line} of the file, ${columnNames[holds]}`, what, mend })
  const cell = (holds: BookColumn): { text: string; column: UnitColumn } | undefined => {
    const filled = columns.filter((column) => column.holds === holds && (row.cells[column.at] ?? '') !== '')
    const [column, second] = filled
    if (second) complain(holds, `There are two on one line.`, 'Give each reading a line of its own.')
    return column && { text: row.cells[column.at] ?? '', column }
  }
  const figure = (holds: BookColumn, read: (text: string, column: UnitColumn) => number | undefined) => {
    const found = cell(holds)
    if (!found) return undefined
    const value = read(found.text, found.column)
    if (value === undefined) complain(holds, `“${found.text}” cannot be read.`, mends[holds] ?? LENGTH)
    return value
  }
  return {
    word: (holds) => cell(holds)?.text,
    lengthM: (holds) => figure(holds, (text, { inUnit }) => columnLengthM(text, inUnit)),
    angleDeg: (holds) => figure(holds, (text, { unit }) => angleFromText(text, unit)),
    miss: (holds) => complain(holds, 'It is empty.', 'Write it, or take the line out.'),
  }
}

const LENGTH = 'Write a length such as 1.234, 5 ft 3 in or 5\' 3 1/2".'
const mends: Partial<Record<BookColumn, string>> = {
  angle: 'Write degrees, such as -12.5, or -20 %, or 1:3.',
}

/** An angle as written: degrees, per cent, or one in so many; falling negative. */
function angleFromText(text: string, unit: string | undefined): number | undefined {
  const plain = text
    .replace(/^[\u2212\u2013]/, '-')
    .replace(/(?<=\d),(?=\d)/, '.')
    .replace(/\s+/g, '')
  const [, sign, inMany] = /^([-+]?)1(?::|in)(\d+\.?\d*)$/i.exec(plain) ?? []
  if (inMany !== undefined && Number(inMany) > 0)
    return (sign === '-' ? -1 : 1) * degreesOf(1 / Number(inMany))
  const [, figure, mark] = /^([-+]?(?:\d+\.?\d*|\.\d+))(°|deg(?:rees?)?|%)?$/i.exec(plain) ?? []
  if (figure === undefined) return undefined
  return (mark ?? unit) === '%' ? degreesOf(Number(figure) / 100) : Number(figure)
}

const degreesOf = (gradient: number): number => (Math.atan(gradient) * 180) / Math.PI
