import { reduceLevelBook, type LevelBook, type ReducedLevelBook, type SurveyTables } from '#core/booking'
import type { Outcome } from '#core/units'
import { refused } from './refused'

/** How a staff is read: back to a known point, to a point between, or forward to the last before the level moves. */
export type SightKind = 'back' | 'inter' | 'fore'

/** One reading on the staff, and what is noted beside it. */
export interface Sight {
  readonly kind: SightKind
  readonly readingM: number
  readonly mark?: string | undefined
  readonly remark?: string | undefined
  /** Distance from the start of the line [m]; none for a change point beside it. */
  readonly distanceM?: number | undefined
  readonly eastM?: number | undefined
  readonly northM?: number | undefined
}

type Row = LevelBook['rows'][number]

const readings = { back: 'backM', inter: 'interM', fore: 'foreM' } as const

/** Whether the level stands up and can sight: its last line has no fore sight alone. */
const stands = (row: Row | undefined): boolean =>
  row !== undefined && (row.foreM === undefined || row.backM !== undefined)

/**
 * The sight that comes next in the usual run of a book.
 *
 * @param book - the book so far
 * @returns a back sight on the first mark and after each fore sight, else a sight between
 */
export function expectedSight({ rows }: LevelBook): SightKind {
  return stands(rows.at(-1)) ? 'inter' : 'back'
}

/**
 * Books a reading: a back sight after a fore sight joins its line, for both are of the same change point.
 *
 * @param book - the book so far, which may be empty
 * @param sight - the reading
 * @returns the book with the reading, or why it cannot stand there
 */
export function bookSight(book: LevelBook, sight: Sight): Outcome<LevelBook> {
  const { kind, readingM, ...beside } = sight
  const last = book.rows.at(-1)
  const where = `reading ${countSights(book) + 1}`
  if (kind === 'back' && stands(last))
    return refused(
      where,
      'The level stands already and has its back sight.',
      'Before it is moved, read a fore sight to a point that stays; then move it and read back to that point.',
    )
  if (kind !== 'back' && !stands(last))
    return refused(
      where,
      'The level has no line of sight yet.',
      'Read back first: to the mark whose level is known, or to the last change point.',
    )
  const reading = { [readings[kind]]: readingM }
  const rows =
    kind === 'back' && last
      ? [...book.rows.slice(0, -1), { ...last, ...reading, ...noted(beside.remark) }]
      : [...book.rows, { ...reading, ...without(beside) }]
  return { ok: true, value: { ...book, rows } }
}

const noted = (remark: string | undefined) => (remark === undefined ? {} : { remark })

/** Without what is undefined. */
const without = (beside: object): object =>
  Object.fromEntries(Object.entries(beside).filter(([, value]) => value !== undefined))

/** How many times the staff was read. */
export function countSights({ rows }: LevelBook): number {
  return rows.reduce(
    (count, row) => count + Object.values(readings).filter((key) => row[key] !== undefined).length,
    0,
  )
}

/** The book without its last reading. */
export function takeSightBack(book: LevelBook): LevelBook {
  const last = book.rows.at(-1)
  const rest = book.rows.slice(0, -1)
  if (last?.foreM === undefined || last.backM === undefined) return { ...book, rows: rest }
  return { ...book, rows: [...rest, without({ ...last, backM: undefined })] }
}

/**
 * The book as if its last reading were its end: a sight between counts as the fore sight, and a back sight from which
 * nothing was read yet is left off.
 *
 * @param book - the book so far
 * @returns a book that can be reduced once it has two lines
 */
export function asFinished(book: LevelBook): LevelBook {
  const last = book.rows.at(-1)
  if (!last) return book
  const { backM, interM, foreM, ...beside } = last
  const endM = foreM ?? interM
  if (endM === undefined || (interM === undefined && backM === undefined)) return book
  return { ...book, rows: [...book.rows.slice(0, -1), { ...beside, foreM: endM }] }
}

/** The book as far as it goes: at its end, not held against any level, nothing shared out. */
export function openBook(book: LevelBook): LevelBook {
  return { ...asFinished(book), endLevelM: undefined, allowable: undefined, adjust: false }
}

/** Whether the book ends as a book must: with a fore sight, and nothing after it. */
export function endsWithFore({ rows }: LevelBook): boolean {
  const last = rows.at(-1)
  return rows.length > 1 && last?.foreM !== undefined && last.backM === undefined
}

/**
 * Levels of a book that is still being written; it is not held against its closing level until it ends.
 *
 * @param book - the book so far
 * @param tables - rules for how far it may miss
 * @returns the reduced book, or the problems with their lines
 */
export function runningBook(
  book: LevelBook,
  tables: Pick<SurveyTables, 'allowables'>,
): Outcome<ReducedLevelBook> {
  return reduceLevelBook(endsWithFore(book) ? book : openBook(book), tables)
}
