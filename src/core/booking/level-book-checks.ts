import type { LevelBook } from './booking.schema'
import type { BookCheck, ReducedLevelBook, ReducedLevelLine } from './reduced-book.types'

/** Sums closer than this agree: only the rounding of the machine lies between them [m]. */
const SAME_SUM_M = 1e-6
/** Last figure that a level is written with: a millimetre, a hundredth of a foot, a sixteenth of an inch [m]. */
const lastFigureM: Readonly<Record<LevelBook['unit'], number>> = {
  m: 0.001,
  cm: 0.001,
  ft: 0.003048,
  'us-ft': 0.003048,
  'ft-in': 0.0015875,
}
/** Beyond half the last figure, what rounding may add [m]. */
const ROUNDING_M = 1e-5

/**
 * The sums that prove a level book: back less fore sights against rises less falls and last less first level, by height
 * of collimation also the sum of all levels, and the levels that were worked out by hand.
 *
 * @param book - the book as written
 * @param lines - the book as reduced
 * @returns the four sums and every check
 */
export function levelBookChecks(
  book: LevelBook,
  lines: readonly ReducedLevelLine[],
): Pick<ReducedLevelBook, 'sums' | 'checks'> {
  const sums = {
    backM: sumOf(lines, ({ backM }) => backM),
    foreM: sumOf(lines, ({ foreM }) => foreM),
    riseM: sumOf(lines, ({ riseM }) => riseM),
    fallM: sumOf(lines, ({ fallM }) => fallM),
  }
  const sightsM = sums.backM - sums.foreM
  const levelsM = (lines.at(-1)?.levelM ?? 0) - (lines[0]?.levelM ?? 0)
  const checks = [
    sumCheck('back sights less fore sights = rises less falls', sightsM, sums.riseM - sums.fallM),
    sumCheck('back sights less fore sights = last level less first level', sightsM, levelsM),
    ...(book.reduction === 'height-of-collimation' ? [allLevels(lines, sums.foreM)] : []),
    ...byHand(book, lines),
  ]
  return { sums, checks }
}

// Each height of collimation counts as often as it was sighted from.
function allLevels(lines: readonly ReducedLevelLine[], foreM: number): BookCheck {
  const sightedFrom = (setUp: number) => lines.filter((line) => line.setUp === setUp).length
  const begun = lines.filter(({ collimationM }) => collimationM !== undefined)
  const collimationsM = sumOf(begun, (line) => (line.collimationM ?? 0) * sightedFrom(line.setUp + 1))
  const expected = collimationsM - sumOf(lines, ({ interM }) => interM) - foreM
  return sumCheck(
    'heights of collimation, each as often as it was sighted from, less intermediate and fore sights = all levels but the first',
    expected,
    sumOf(lines.slice(1), ({ levelM }) => levelM),
  )
}

function byHand(book: LevelBook, lines: readonly ReducedLevelLine[]): BookCheck[] {
  return book.rows.flatMap(({ handLevelM }, at) => {
    const line = lines[at]
    if (handLevelM === undefined || !line) return []
    const ok = Math.abs(line.levelM - handLevelM) <= lastFigureM[book.unit] / 2 + ROUNDING_M
    return [
      {
        what: `level worked out by hand, line ${line.line}`,
        line: line.line,
        expected: line.levelM,
        found: handLevelM,
        ok,
      },
    ]
  })
}

const sumCheck = (what: string, expected: number, found: number): BookCheck => ({
  what,
  expected,
  found,
  ok: Math.abs(expected - found) <= SAME_SUM_M,
})

function sumOf(
  lines: readonly ReducedLevelLine[],
  of: (line: ReducedLevelLine) => number | undefined,
): number {
  return lines.reduce((sum, line) => sum + (of(line) ?? 0), 0)
}
