import {
  bookSchema,
  fromTheTop,
  markedLevelsOf,
  stationsOf,
  type Book,
  type LevelBook,
  type SurveyTables,
} from '#core/booking'
import type { LevelsSurvey, ProfileSurvey } from '#core/survey'
import type { Outcome } from '#core/units'
import { problemsOf } from '#plan'
import { refused } from './refused'
import { linesOf } from './field-books'
import { asFinished, endsWithFore, openBook, runningBook } from './staff-book'

type Rules = Pick<SurveyTables, 'allowables'>

/** A profile from a book. */
export interface BookProfile {
  readonly stations: ProfileSurvey['stations']
  /** The line was measured uphill, and is turned round. */
  readonly turned: boolean
}

/**
 * The profile that a book gives so far, from the top.
 *
 * @param book - the book, finished or not
 * @param tables - rules for how far a level book may miss
 * @returns stations, each distance once, to the millimetre
 */
export function profileOfBook(book: Book, tables: Rules): Outcome<BookProfile> {
  const read = stationsOf(asItStands(book), tables)
  if (!read.ok) return read
  const { stations, turned } = fromTheTop(read.value)
  const once = stations.filter(({ distanceM }, at) => stations[at - 1]?.distanceM !== distanceM)
  return {
    ok: true,
    value: {
      turned,
      stations: once.map(({ distanceM, levelM }) => ({
        distanceM: millimetres(distanceM),
        levelM: millimetres(levelM),
      })),
    },
  }
}

/** A level book that is not at its end yet is neither closed nor shared out. */
const asItStands = (book: Book): Book =>
  book.kind !== 'level-book' || endsWithFore(book) ? book : openBook(book)

/** Spot levels from a book, and lines that gave none. */
export interface BookLevels {
  readonly ground: LevelsSurvey
  readonly withoutPlace: readonly number[]
  /** Lines at a place that has a level already; the first is kept. */
  readonly again: readonly number[]
}

/**
 * Spot levels from the lines of a level book that have a place.
 *
 * @param book - the book
 * @param tables - rules for how far it may miss
 * @returns the levels with their marks, or why there are none
 */
export function levelsOfBook(book: LevelBook, tables: Rules): Outcome<BookLevels> {
  const reduced = runningBook(book, tables)
  if (!reduced.ok) return reduced
  const { levels, again, withoutPlace } = markedLevelsOf(reduced.value)
  if (levels.length < 3)
    return refused(
      'places of the book',
      `${levels.length} of its lines have a place east and north.`,
      'Give three lines or more their east and north; a surface needs them.',
    )
  const points = levels.map(({ mark, eastM, northM, levelM }) => ({
    ...(mark === undefined ? {} : { mark }),
    eastM: millimetres(eastM),
    northM: millimetres(northM),
    levelM: millimetres(levelM),
  }))
  return {
    ok: true,
    value: { ground: { kind: 'levels', points }, withoutPlace, again: again.map(({ line }) => line) },
  }
}

/**
 * A book as a plan keeps it: at its end and whole.
 *
 * @param book - the book as written
 * @returns the book, or what is wrong with it, line by line
 */
export function keptBook(book: Book): Outcome<Book> {
  if (linesOf(book).length === 0)
    return refused('field book', 'It has no lines yet.', 'Book the first reading.')
  const parsed = bookSchema.safeParse(book.kind === 'level-book' ? asFinished(book) : book)
  return parsed.success
    ? { ok: true, value: parsed.data }
    : { ok: false, problems: problemsOf(parsed.error.issues, 'field book') }
}

const millimetres = (metres: number): number => Math.round(metres * 1000) / 1000
