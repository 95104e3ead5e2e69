import {
  fromTheTop,
  markedLevelsOf,
  methodOfBook,
  reduceLevelBook,
  stationsOf,
  type Book,
} from '#core/booking'
import type { GroundSurvey } from '#core/survey'
import type { Outcome } from '#core/units'
import { loadTables } from '#io'
import type { Plan } from '#plan'
import type { Arguments } from './arguments'
import { bookFromFile } from './book-from-file'
import type { Console } from './console'
import { UsageError } from './exit'

/** Ground, and what is known of how it was measured. */
export interface MeasuredGround {
  readonly ground: GroundSurvey
  readonly measured: Pick<Plan['survey'], 'books' | 'accuracy' | 'compass'>
}

/** Ground from a field book, which is kept with it. */
export function groundFromBook(file: string, given: Arguments, console: Console): Outcome<MeasuredGround> {
  const read = bookFromFile(file, given, console)
  if (!read.ok) return read
  const { book } = read.value
  const ground = hasPlaces(book) ? levelsOf(book, console) : profileOf(book, given, console)
  if (!ground.ok) return ground
  const methodId = methodOfBook(book, loadTables().survey).id
  return { ok: true, value: { ground: ground.value, measured: { books: [book], accuracy: { methodId } } } }
}

type LevelBook = Extract<Book, { kind: 'level-book' }>

const hasPlaces = (book: Book): book is LevelBook =>
  book.kind === 'level-book' && book.rows.some(({ eastM }) => eastM !== undefined)

/** Fewest points that a surface can be made of. */
const FEWEST_POINTS = 3

function levelsOf(book: LevelBook, console: Console): Outcome<GroundSurvey> {
  const reduced = reduceLevelBook(book, loadTables().survey)
  if (!reduced.ok) return reduced
  const { levels, again, withoutPlace } = markedLevelsOf(reduced.value)
  if (withoutPlace.length > 0)
    console.complain(`Lines without a place, kept in the book but not used: ${withoutPlace.join(', ')}.`)
  for (const { line, first, apartM } of again)
    console.complain(
      `Line ${line} is at the place of line ${first}, ${apartM.toFixed(3)} m apart; line ${first} is used.`,
    )
  if (levels.length < FEWEST_POINTS)
    return {
      ok: false,
      problems: [
        {
          where: 'places of the book',
          what: `Only ${levels.length} lines have a place east and north.`,
          mend: `A surface needs at least ${FEWEST_POINTS}.`,
        },
      ],
    }
  const points = levels.map(({ mark, eastM, northM, levelM }) => ({
    ...(mark === undefined ? {} : { mark }),
    eastM,
    northM,
    levelM,
  }))
  return { ok: true, value: { kind: 'levels', points } }
}

function profileOf(book: Book, given: Arguments, console: Console): Outcome<GroundSurvey> {
  const found = stationsOf(book, loadTables().survey)
  if (!found.ok) return found
  const { stations, turned } = fromTheTop(found.value)
  if (turned) console.complain('The line was walked uphill; the profile is counted from its top.')
  const [facesDeg, widthM] = [given.number('faces'), given.number('width')]
  if (facesDeg === undefined || widthM === undefined)
    throw new UsageError('A profile from a book needs --faces and --width.')
  const ground = {
    kind: 'profile',
    distancesAre: 'plan',
    stations: stations.map(({ distanceM, levelM }) => ({ distanceM, levelM })),
    facesDeg,
    widthM,
  } as const
  return { ok: true, value: ground }
}
