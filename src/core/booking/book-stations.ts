import { toRadians, type Outcome, type Problem } from '#core/units'
import type { Book, ChainBook, LevelBook, StepBook, StringBook } from './booking.schema'
import { reduceLevelBook, type AllowableTable } from './reduce-level-book'
import type { BookStation } from './reduced-book.types'

/**
 * Points of a book along a line, for a profile. A leg taped at an angle rises by length × sine and runs length × cosine;
 * a step runs its span; a string runs level. A level book gives the lines that carry a distance, in order of distance.
 *
 * @param book - any field book
 * @param tables - rules for how far a level book may miss
 * @returns plan distance and level of every point, adjusted where the book asks for it, or the problems
 */
export function stationsOf(book: Book, tables: AllowableTable): Outcome<readonly BookStation[]> {
  if (book.kind === 'level-book') return levelStations(book, tables)
  const legs = legsOf(book)
  const stations: BookStation[] = [{ line: 0, mark: undefined, distanceM: 0, levelM: book.startLevelM }]
  let [distanceM, levelM] = [0, book.startLevelM]
  for (const [at, leg] of legs.entries()) {
    distanceM += leg.runM
    levelM += leg.riseM
    stations.push({ line: at + 1, mark: leg.mark, distanceM, levelM })
  }
  return { ok: true, value: stations }
}

interface Leg {
  readonly mark: string | undefined
  readonly runM: number
  readonly riseM: number
}

function legsOf(book: ChainBook | StepBook | StringBook): readonly Leg[] {
  if (book.kind === 'chain')
    return book.legs.map(({ mark, lengthM, angleDeg }) => ({
      mark,
      runM: lengthM * Math.cos(toRadians(angleDeg)),
      riseM: lengthM * Math.sin(toRadians(angleDeg)),
    }))
  if (book.kind === 'steps')
    return book.steps.map(({ mark, dropM }) => ({ mark, runM: book.spanM, riseM: -dropM }))
  return book.drops.map(({ mark, runM, dropM }) => ({ mark, runM, riseM: -dropM }))
}

function levelStations(book: LevelBook, tables: AllowableTable): Outcome<readonly BookStation[]> {
  const reduced = reduceLevelBook(book, tables)
  if (!reduced.ok) return reduced
  const stations = reduced.value.lines
    .flatMap(({ line, mark, distanceM, adjustedM }) =>
      distanceM === undefined ? [] : [{ line, mark, distanceM, levelM: adjustedM }],
    )
    .sort((one, other) => one.distanceM - other.distanceM)
  const problems = [...tooFew(stations), ...twiceAtOnePlace(stations)]
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: stations }
}

function tooFew(stations: readonly BookStation[]): Problem[] {
  if (stations.length >= 2) return []
  return [
    {
      where: 'distances of the book',
      what: `${stations.length === 0 ? 'No line has' : 'Only one line has'} a distance.`,
      mend: 'Give two lines or more their distance along the line, or their place east and north.',
    },
  ]
}

/** Two levels at one distance that agree to this are one point sighted twice [m]. */
const SAME_LEVEL_M = 0.005

function twiceAtOnePlace(stations: readonly BookStation[]): Problem[] {
  return stations.flatMap((station, at) => {
    const before = stations[at - 1]
    if (before?.distanceM !== station.distanceM || Math.abs(before.levelM - station.levelM) <= SAME_LEVEL_M)
      return []
    return [
      {
        where: `lines ${before.line} and ${station.line} of the book`,
        what: `Both stand at ${station.distanceM} m, with two levels.`,
        mend: 'Give the head and the foot of a step distances a little apart, or take one of the two out.',
      },
    ]
  })
}
