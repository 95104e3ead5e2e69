import {
  FOOT_M,
  lengthToText,
  reduceLevelBook,
  stationsOf,
  type Book,
  type LevelBook,
  type WrittenUnit,
} from '#core/booking'
import { placeUnit } from './book-cell'
import { linesOf, withLeg, type LegBook, type LegLine } from './field-books'
import { bookSight, countSights, openBook, type Sight } from './staff-book'

/** What a figure would give before it is booked; or why it cannot be. */
export interface Told {
  readonly words: string
  readonly wrong: string
}

/** Longest staff [m], as the book’s own check has it. */
const LONGEST_STAFF_M = 5
/** Longest leg of a book of legs [m], and steepest [°], as its schema has them. */
const LONGEST_LEG_M = 2000
const STEEPEST_DEG = 80
/** Largest drop of one line [m]. */
const LARGEST_DROP_M = 10
/** No rules: a book that is still open is held against none. */
const NO_RULES = { allowables: [] }

/** What a reading on the staff would give. */
export function tellSight(book: LevelBook, sight: Sight): Told {
  const booked = bookSight(book, sight)
  if (!booked.ok) return wrong(booked.problems.map(({ what, mend }) => `${what} ${mend}`).join(' '))
  if (Math.abs(sight.readingM) > LONGEST_STAFF_M)
    return wrong(`A staff is at most ${LONGEST_STAFF_M} m: was it in another unit?`)
  const before = lastLevelM(book)
  if (sight.kind === 'back') return right(`line of sight ${figure(before + sight.readingM, book.unit)}`)
  const levelM = lastLevelM(booked.value)
  return right(`level ${figure(levelM, book.unit)}, ${fallWords(before - levelM, book.unit)} the last`)
}

/** What a leg, a step or a drop would give. */
export function tellLeg(book: LegBook, line: LegLine): Told {
  const fault = legFault(line)
  if (fault !== '') return wrong(fault)
  const end = stationsOf(withLeg(book, line), NO_RULES)
  const [before, last] = end.ok ? end.value.slice(-2) : []
  if (!before || !last) return wrong('It cannot be worked out.')
  const out = figure(last.distanceM, placeUnit(book.unit))
  return right(
    `level ${figure(last.levelM, book.unit)}, ${fallWords(before.levelM - last.levelM, book.unit)} the last, ${out} out`,
  )
}

function legFault({ lengthM, angleDeg, runM, dropM }: LegLine): string {
  const far = lengthM ?? runM
  if (far !== undefined && !(far > 0 && far <= LONGEST_LEG_M)) return 'A length is more than 0 m.'
  if (angleDeg !== undefined && Math.abs(angleDeg) > STEEPEST_DEG)
    return `Steeper than ${STEEPEST_DEG}° is a wall.`
  if (dropM !== undefined && Math.abs(dropM) > LARGEST_DROP_M)
    return `A drop is at most ${LARGEST_DROP_M} m: was it in another unit?`
  return ''
}

/** How far the book has come, in a sentence. */
export function bookedWords(book: Book): string {
  if (book.kind === 'level-book') {
    const count = countSights(book)
    if (count === 0) return 'Nothing booked yet. The first reading is a back sight on the first mark.'
    return `${count} booked; level ${figure(lastLevelM(book), book.unit)}`
  }
  const count = linesOf(book).length
  const end = stationsOf(book, NO_RULES)
  const last = end.ok ? end.value.at(-1) : undefined
  if (count === 0 || !last) return 'Nothing booked yet. Begin at the top and go down.'
  return `${count} booked; level ${figure(last.levelM, book.unit)}, ${fallWords(book.startLevelM - last.levelM, book.unit)} the start, ${figure(last.distanceM, placeUnit(book.unit))} out`
}

/** Level of the point booked last; of the first mark while there is none. */
function lastLevelM(book: LevelBook): number {
  const open = openBook(book)
  if (open.rows.length < 2) return book.startLevelM
  const reduced = reduceLevelBook(open, NO_RULES)
  return reduced.ok ? (reduced.value.lines.at(-1)?.levelM ?? book.startLevelM) : book.startLevelM
}

/** Where the next point is taken to lie: as far from the last as that was from the one before [m]. */
export function nextDistanceM(book: LevelBook): number {
  const known = book.rows.flatMap(({ distanceM }) => (distanceM === undefined ? [] : [distanceM]))
  const [before, last] = [known.at(-2), known.at(-1)]
  const firstM = placeUnit(book.unit) === 'm' ? FIRST_STEP_M : FIRST_STEP_FEET_M
  if (last === undefined) return book.rows.length === 0 ? 0 : firstM
  return last + (before === undefined ? firstM : Math.abs(last - before) || firstM)
}

/** The second point is taken to lie this far down [m]; own judgement. */
const FIRST_STEP_M = 2
/** The same where distances are in feet: 5 ft. */
const FIRST_STEP_FEET_M = 5 * FOOT_M

const figure = (valueM: number, unit: WrittenUnit): string =>
  unit === 'ft-in' ? lengthToText(valueM, unit) : `${lengthToText(valueM, unit)} ${unit}`

function fallWords(fallM: number, unit: WrittenUnit): string {
  if (Math.abs(fallM) < 5e-4) return 'level with'
  return `${figure(Math.abs(fallM), unit)} ${fallM > 0 ? 'below' : 'above'}`
}

const right = (words: string): Told => ({ words, wrong: '' })
const wrong = (words: string): Told => ({ words: '', wrong: words })
