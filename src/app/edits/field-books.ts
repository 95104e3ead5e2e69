import type { Book, ChainBook, LevelBook, StepBook, StringBook, SurveyMethod } from '#core/booking'
import { takeSightBack } from './staff-book'

/** Books of lines that each lead from the point before. */
export type LegBook = ChainBook | StepBook | StringBook

/** One line of such a book, whichever of its figures it needs. */
export interface LegLine {
  readonly mark?: string | undefined
  readonly remark?: string | undefined
  readonly lengthM?: number | undefined
  readonly angleDeg?: number | undefined
  readonly runM?: number | undefined
  readonly dropM?: number | undefined
}

/** Level given to the first mark, when nothing is known of the sea [m]. */
const FIRST_LEVEL_M = 100
/** Usual span of an A-frame, and of a line level [m]; own judgement. */
const SPAN_M = { 'a-frame': 2, 'line-level': 5 } as const

/**
 * An empty book for a method.
 *
 * @param method - a method that fills a field book
 * @param on - day of the measuring, ISO 8601
 * @returns the book without lines; undefined when the method fills none of ours
 */
export function emptyBook(method: SurveyMethod, on: string): Book | undefined {
  const head = { id: method.id, name: method.name, on, unit: 'm', startLevelM: FIRST_LEVEL_M } as const
  if (method.book === 'level-book')
    return { kind: 'level-book', ...head, reduction: 'rise-and-fall', adjust: false, rows: [] }
  if (method.book === 'chain') return { kind: 'chain', ...head, legs: [] }
  if (method.book === 'string') return { kind: 'string', ...head, drops: [] }
  if (method.book === null) return undefined
  const tool = method.id === 'line-level' ? 'line-level' : 'a-frame'
  return { kind: 'steps', ...head, tool, spanM: SPAN_M[tool], steps: [] }
}

/** Lines of a book, whatever they are called in it. */
export function linesOf(book: Book): readonly (LevelBook['rows'][number] | LegLine)[] {
  if (book.kind === 'level-book') return book.rows
  if (book.kind === 'chain') return book.legs
  return book.kind === 'steps' ? book.steps : book.drops
}

/** The book with a line more; figures its kind does not need are left off. */
export function withLeg(book: LegBook, line: LegLine): LegBook {
  const words = {
    ...(line.mark ? { mark: line.mark } : {}),
    ...(line.remark ? { remark: line.remark } : {}),
  }
  const { lengthM = 0, angleDeg = 0, runM = 0, dropM = 0 } = line
  if (book.kind === 'chain') return { ...book, legs: [...book.legs, { ...words, lengthM, angleDeg }] }
  if (book.kind === 'steps') return { ...book, steps: [...book.steps, { ...words, dropM }] }
  return { ...book, drops: [...book.drops, { ...words, runM, dropM }] }
}

/** The book without what was booked last: a reading of a level book, a line of any other. */
export function takeBack(book: Book): Book {
  if (book.kind === 'level-book') return takeSightBack(book)
  if (book.kind === 'chain') return { ...book, legs: book.legs.slice(0, -1) }
  if (book.kind === 'steps') return { ...book, steps: book.steps.slice(0, -1) }
  return { ...book, drops: book.drops.slice(0, -1) }
}

/** The book without one of its lines. */
export function withoutLine(book: Book, at: number): Book {
  const but = <Row>(rows: readonly Row[]) => rows.filter((_, index) => index !== at)
  if (book.kind === 'level-book') return { ...book, rows: but(book.rows) }
  if (book.kind === 'chain') return { ...book, legs: but(book.legs) }
  if (book.kind === 'steps') return { ...book, steps: but(book.steps) }
  return { ...book, drops: but(book.drops) }
}
