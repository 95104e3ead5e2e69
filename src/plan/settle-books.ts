import {
  fromTheTop,
  markedLevelsOf,
  reduceLevelBook,
  stationsOf,
  type Book,
  type SurveyTables,
} from '#core/booking'
import type { LevelsSurvey, ProfileSurvey } from '#core/survey'
import type { Settlement } from './findings.types'
import type { Plan } from './plan.schema'

/** Levels that differ by less than this are the same reading [m]. */
const SAME_LEVEL_M = 0.005

/** Places that differ by less than this are the same point [m]. */
const SAME_PLACE_M = 0.01

/** Field books whose levels are no longer those that the ground is made of. */
export function changedSinceBooked({ survey }: Plan, tables: SurveyTables): readonly Settlement[] {
  const { ground, books = [] } = survey
  return books.flatMap((book) => {
    const differing = differences(book, ground, { tables, alone: books.length === 1 })
    return differing > 0 ? [settlementOf(book, differing)] : []
  })
}

interface Compared {
  readonly tables: SurveyTables
  /** The only book of the plan: one of several may hold a part of a profile. */
  readonly alone: boolean
}

function differences(book: Book, ground: Plan['survey']['ground'], { tables, alone }: Compared): number {
  if (ground.kind === 'profile' && alone) return stationsChanged(book, ground, tables)
  return ground.kind === 'levels' && book.kind === 'level-book' ? pointsChanged(book, ground, tables) : 0
}

function stationsChanged(
  book: Book,
  { stations, distancesAre }: ProfileSurvey,
  tables: SurveyTables,
): number {
  const booked = stationsOf(book, tables)
  if (!booked.ok || distancesAre === 'slope') return 0
  const turned = fromTheTop(booked.value).stations
  const changed = turned.filter(({ distanceM, levelM }) => {
    const station = stations.find((each) => Math.abs(each.distanceM - distanceM) < SAME_PLACE_M)
    return !station || Math.abs(station.levelM - levelM) > SAME_LEVEL_M
  })
  return changed.length + Math.max(0, stations.length - turned.length)
}

function pointsChanged(
  book: Extract<Book, { kind: 'level-book' }>,
  { points }: LevelsSurvey,
  tables: SurveyTables,
): number {
  const reduced = reduceLevelBook(book, tables)
  if (!reduced.ok) return 0
  return markedLevelsOf(reduced.value).levels.filter((booked) => {
    const point = points.find(
      ({ eastM, northM }) => Math.hypot(eastM - booked.eastM, northM - booked.northM) < SAME_PLACE_M,
    )
    return !point || Math.abs(point.levelM - booked.levelM) > SAME_LEVEL_M
  }).length
}

function settlementOf({ id, name }: Book, count: number): Settlement {
  return {
    id: `book-${id}`,
    kind: 'gap',
    what: `The ground differs from the field book “${name}” in ${count} ${count === 1 ? 'place' : 'places'}.`,
    mend: 'If you corrected a level on purpose, all is well: the book stays as it was written. Else write the book’s levels again.',
    zoneId: undefined,
    atM: undefined,
    source: 'yours',
  }
}
