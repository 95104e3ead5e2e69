import type { Problem } from '#core/units'
import type { LevelBook } from './booking.schema'
import type { Allowable } from './methods.schema'
import type { BookClosing } from './reduced-book.types'

interface Rules {
  readonly allowables: readonly Allowable[]
}

/**
 * What keeps a book from being closed as it asks to be.
 *
 * @param book - the book as written
 * @param tables - rules for how far it may miss
 * @returns every problem
 */
export function closingProblems(book: LevelBook, tables: Rules): Problem[] {
  const problems: Problem[] = []
  const rule = tables.allowables.find(({ id }) => id === book.allowable)
  if (book.adjust && book.endLevelM === undefined)
    problems.push({
      where: 'closing level of the book',
      what: 'The misclosure is to be shared out, but no closing level is known.',
      mend: 'Give the known level of the last mark; back at the first mark it is the level you started from.',
    })
  if (book.allowable !== undefined && !rule)
    problems.push({
      where: 'allowable of the book',
      what: `“${book.allowable}” is not in the table of allowable misclosures.`,
      mend: `Choose one of ${tables.allowables.map(({ id }) => id).join(', ')}.`,
    })
  if (rule?.per === 'root-km' && book.lineKm === undefined)
    problems.push({
      where: 'length of the levelled line',
      what: `“${rule.name}” goes by the length of the line, which is not given.`,
      mend: 'Give the length walked from the first mark to the last in kilometres, or choose a rule by set-ups.',
    })
  return problems
}

/** How a book ends. */
export interface BookEnd {
  readonly lastLevelM: number
  readonly setUps: number
}

/** Equal figures may part in their last binary place [m]. */
const ROUNDING_M = 1e-9

/**
 * How far a book misses a known level, and what is allowed.
 *
 * @param book - the book as written, without problems
 * @param end - level reduced for the last mark, and number of set-ups
 * @param tables - rules for how far it may miss
 * @returns the closing; undefined when the book ends on no known level
 */
export function closingOf(book: LevelBook, end: BookEnd, tables: Rules): BookClosing | undefined {
  if (book.endLevelM === undefined) return undefined
  const misclosureM = end.lastLevelM - book.endLevelM
  const allowable = tables.allowables.find(({ id }) => id === book.allowable)
  const limitM = allowable && allowedM(allowable, book, end.setUps)
  return {
    misclosureM,
    perSetUpM: -misclosureM / end.setUps,
    limit:
      allowable === undefined || limitM === undefined
        ? undefined
        : { allowable, limitM, within: Math.abs(misclosureM) <= limitM + ROUNDING_M },
  }
}

function allowedM({ per, limitMm }: Allowable, book: LevelBook, setUps: number): number {
  const roots = per === 'root-km' ? (book.lineKm ?? 0) : setUps
  return (limitMm / 1000) * Math.sqrt(roots)
}
