import Papa from 'papaparse'
import { looksNumeric } from './table-numbers'

/** Marks between cells, in the order they are preferred when they serve equally well. */
const delimiters = ['\t', ';', ',', '|', ' '] as const

export type Delimiter = (typeof delimiters)[number]

/** Lines looked at to tell the delimiter. */
const LOOKED_AT = 60

/**
 * The mark between cells: the one that leaves most cells of the first lines as whole numbers. So a comma between two
 * digits counts as a decimal mark where blanks or semicolons divide the line better.
 *
 * @param text - the table
 * @returns the delimiter
 */
export function delimiterOf(text: string): Delimiter {
  const lines = headOf(text)
  const scores = delimiters.map((delimiter) =>
    lines.reduce((sum, line) => sum + numbersIn(cellsOf(line, delimiter)), 0),
  )
  const best = Math.max(...scores)
  return delimiters.find((_, at) => scores[at] === best && best > 0) ?? plainGuess(lines.join('\n'))
}

/** First lines, without reading the whole text. */
function headOf(text: string): string[] {
  const lines: string[] = []
  let from = 0
  while (lines.length < LOOKED_AT && from < text.length) {
    const end = text.indexOf('\n', from)
    const line = text.slice(from, end < 0 ? undefined : end).slice(0, 4000)
    if (line.trim() !== '') lines.push(line)
    from = end < 0 ? text.length : end + 1
  }
  return lines
}

/** One number alone in a line says nothing of what divides cells. */
function numbersIn(cells: readonly string[]): number {
  const numbers = cells.filter(looksNumeric).length
  return numbers < 2 ? 0 : numbers
}

/**
 * One line taken apart.
 *
 * @param line - without its line end
 * @param delimiter - mark between cells; any run of blanks counts as one
 * @returns cells, trimmed
 */
export function cellsOf(line: string, delimiter: Delimiter): string[] {
  if (delimiter === ' ') return line.trim().split(/\s+/)
  if (!line.includes('"')) return line.split(delimiter).map((cell) => cell.trim())
  const [cells = []] = Papa.parse<string[]>(line, { delimiter }).data
  return cells.map((cell) => cell.trim())
}

/** For text without figures, such as a heading alone. */
function plainGuess(head: string): Delimiter {
  return (
    delimiters.find((delimiter) => delimiter !== ' ' && head.includes(delimiter)) ??
    (/\S +\S/.test(head) ? ' ' : ',')
  )
}
