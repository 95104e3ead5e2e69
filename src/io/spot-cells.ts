import type { Problem } from '#core/units'
import type { FigureColumn } from './spot-columns'
import { toNumber } from './table-numbers'
import type { TextTable } from './text-table'

/** One row of a table of places, read cell by cell; what is wrong is gathered in `problems`. */
export interface SpotCells {
  /** A cell's text, undefined when it is empty or its column is not there. */
  text(column: string): string | undefined
  /** A cell's figure, undefined when it is empty; out of range or no number is a problem. */
  figure(column: FigureColumn): number | undefined
  /** One of some words, undefined when it is empty; any other word is a problem. */
  word<T extends string>(column: string, words: readonly T[]): T | undefined
  /** Says that something is wrong in a column. */
  refuse(column: string, what: string, mend: string): undefined
}

/** Reads one row of a table; columns go by their names, whatever their case. */
export function spotCells(table: TextTable, rowIndex: number, problems: Problem[]): SpotCells {
  const row = table.rows[rowIndex] ?? []
  const line = table.lines[rowIndex] ?? rowIndex + 1
  const text = (column: string) => {
    const at = table.columns.findIndex((name) => name.toLowerCase() === column.toLowerCase())
    return row[at] === '' ? undefined : row[at]
  }
  const refuse = (column: string, what: string, mend: string): undefined => {
    problems.push({ where: `row ${line}, ${column}`, what, mend })
  }
  return {
    text,
    refuse,
    figure: ({ name, least, most, unit }) => {
      const written = text(name)
      if (written === undefined) return undefined
      const value = toNumber(written, table.decimalMark)
      if (value !== undefined && value >= least && value <= most) return value
      return refuse(
        name,
        value === undefined ? `“${written}” is not a number.` : `${written}${unit} cannot be.`,
        `Give a number of ${least} to ${most}${unit}.`,
      )
    },
    word: (column, words) => {
      const written = text(column)
      if (written === undefined) return undefined
      const plain = written.toLowerCase().replace(/[-_\s]+/g, ' ')
      return (
        words.find((word) => word === plain) ??
        refuse(column, `“${written}” is none of the words known here.`, `Use one of ${words.join(', ')}.`)
      )
    },
  }
}
