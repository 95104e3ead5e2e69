import type { Problem } from '#core/units'
import type { LevelBook } from './booking.schema'

type Row = LevelBook['rows'][number]

/** Longest staff in use [m]. */
const LONGEST_STAFF_M = 5

/**
 * What keeps a level book from being reduced, line by line.
 *
 * @param book - the book as written
 * @returns every problem, in the order of the lines
 */
export function levelBookProblems(book: LevelBook): Problem[] {
  const last = book.rows.length - 1
  return book.rows.flatMap((row, at) => {
    const where = `line ${at + 1} of the book`
    const wrong = [...readingFaults(row), ...placeFaults(row, at, last)]
    return wrong.map(([what, mend]) => ({ where, what, mend }))
  })
}

type Fault = readonly [what: string, mend: string]

const sightNames = { backM: 'back sight', interM: 'intermediate sight', foreM: 'fore sight' } as const

function readingFaults(row: Row): Fault[] {
  return (['backM', 'interM', 'foreM'] as const).flatMap((sight): Fault[] => {
    const readingM = row[sight]
    if (readingM === undefined || Math.abs(readingM) <= LONGEST_STAFF_M) return []
    return [
      [
        `The ${sightNames[sight]} ${readingM} m cannot be read on a staff of ${LONGEST_STAFF_M} m.`,
        'Look whether it was in centimetres or feet, or whether the point slipped a place.',
      ],
    ]
  })
}

function placeFaults(row: Row, at: number, last: number): Fault[] {
  const sights = {
    back: row.backM !== undefined,
    inter: row.interM !== undefined,
    fore: row.foreM !== undefined,
  }
  if (!sights.back && !sights.inter && !sights.fore)
    return [['There is no sight on this line.', 'Write its reading, or take the line out.']]
  if (last === 0) return [['One line makes no levels.', 'Write the sights that follow it.']]
  if (at === 0) return firstLine(sights)
  if (sights.inter && (sights.back || sights.fore))
    return [
      [
        'An intermediate sight stands beside another sight.',
        'A point seen once has the intermediate sight alone; a change point has a fore sight and a back sight.',
      ],
    ]
  return at === last ? lastLine(sights) : betweenLine(sights)
}

interface Sights {
  readonly back: boolean
  readonly inter: boolean
  readonly fore: boolean
}

function firstLine({ back, inter, fore }: Sights): Fault[] {
  if (!back)
    return [
      [
        'The first line has no back sight.',
        'A book begins with a back sight on the mark whose level is known.',
      ],
    ]
  return inter || fore
    ? [
        [
          `The first line has ${inter ? 'an intermediate' : 'a fore'} sight beside its back sight.`,
          'Nothing was sighted before it: keep the back sight alone.',
        ],
      ]
    : []
}

function lastLine({ back, inter }: Sights): Fault[] {
  if (inter)
    return [
      [
        'The last sight is written as an intermediate one.',
        'Write the last sight of a book as a fore sight, so that its sums can be proved.',
      ],
    ]
  return back
    ? [
        [
          'The book ends with a back sight, and nothing was sighted from there.',
          'End with a fore sight, or take the back sight out.',
        ],
      ]
    : []
}

function betweenLine({ back, inter, fore }: Sights): Fault[] {
  if (inter || (back && fore)) return []
  return back
    ? [
        [
          'A back sight stands alone: the change point has no fore sight.',
          'Write the fore sight taken to it before the level was moved on the same line.',
        ],
      ]
    : [
        [
          'A fore sight stands alone: the change point has no back sight.',
          'Write the back sight taken to it after the level was moved on the same line, or make it an intermediate sight.',
        ],
      ]
}
