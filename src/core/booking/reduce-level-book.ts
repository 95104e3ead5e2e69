import type { Outcome, Problem } from '#core/units'
import type { LevelBook } from './booking.schema'
import { closingOf, closingProblems } from './book-closing'
import { levelBookProblems } from './level-book-problems'
import { levelBookChecks } from './level-book-checks'
import type { Allowable } from './methods.schema'
import type { ReducedLevelBook, ReducedLevelLine } from './reduced-book.types'

/** What reducing a book asks of the tables. */
export interface AllowableTable {
  readonly allowables: readonly Allowable[]
}

/**
 * Reduces a level book. By rise and fall each point follows from the reading before it; by height of collimation each
 * point follows from the line of sight of its set-up.
 *
 * @param book - the book as written
 * @param tables - rules for how far it may miss
 * @returns levels line by line with the sums that prove them, or every problem with its line
 */
export function reduceLevelBook(book: LevelBook, tables: AllowableTable): Outcome<ReducedLevelBook> {
  const problems: Problem[] = [...levelBookProblems(book), ...closingProblems(book, tables)]
  if (problems.length > 0) return { ok: false, problems }
  const raw = book.reduction === 'rise-and-fall' ? byRiseAndFall(book) : byCollimation(book)
  const setUps = book.rows.filter(({ backM }) => backM !== undefined).length
  const closing = closingOf(book, { lastLevelM: raw.at(-1)?.levelM ?? book.startLevelM, setUps }, tables)
  const perSetUpM = book.adjust ? (closing?.perSetUpM ?? 0) : 0
  const lines = raw.map((line) => ({ ...line, adjustedM: line.levelM + perSetUpM * line.setUp }))
  return {
    ok: true,
    value: {
      reduction: book.reduction,
      lines,
      setUps,
      ...levelBookChecks(book, lines),
      closing,
      adjusted: book.adjust,
    },
  }
}

type Row = LevelBook['rows'][number]
type RawLine = Omit<ReducedLevelLine, 'adjustedM'>

const sightTo = (row: Row): number => row.interM ?? row.foreM ?? 0

function byRiseAndFall(book: LevelBook): RawLine[] {
  let levelM = book.startLevelM
  let beforeM = 0
  return walked(book, (row, first) => {
    const stepM = first ? 0 : beforeM - sightTo(row)
    levelM += stepM
    beforeM = row.backM ?? sightTo(row)
    return levelM
  })
}

function byCollimation(book: LevelBook): RawLine[] {
  let collimationM = 0
  return walked(book, (row, first) => {
    const levelM = first ? book.startLevelM : collimationM - sightTo(row)
    if (row.backM !== undefined) collimationM = levelM + row.backM
    return levelM
  })
}

// Both ways fill the same columns, so that either can be shown.
function walked(book: LevelBook, levelOf: (row: Row, first: boolean) => number): RawLine[] {
  let setUp = 0
  let beforeM = 0
  return book.rows.map((row, at) => {
    const first = at === 0
    const stepM = first ? 0 : beforeM - sightTo(row)
    beforeM = row.backM ?? sightTo(row)
    const levelM = levelOf(row, first)
    const line: RawLine = {
      ...row,
      line: at + 1,
      riseM: !first && stepM >= 0 ? stepM : undefined,
      fallM: stepM < 0 ? -stepM : undefined,
      collimationM: row.backM === undefined ? undefined : levelM + row.backM,
      setUp,
      levelM,
    }
    if (row.backM !== undefined) setUp += 1
    return line
  })
}
