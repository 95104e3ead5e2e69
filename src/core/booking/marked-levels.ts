import type { ReducedLevelBook, ReducedLevelLine } from './reduced-book.types'

/** A level at a place. */
interface MarkedLevel {
  readonly line: number
  readonly mark: string | undefined
  readonly eastM: number
  readonly northM: number
  readonly levelM: number
}

/** The points of a level book by whether they have a place. */
export interface MarkedLevels {
  /** Points with a place east and north. */
  readonly levels: readonly MarkedLevel[]
  /** Lines at a place that has a level already, with how far they are from it [m]; the first is kept. */
  readonly again: readonly { readonly line: number; readonly first: number; readonly apartM: number }[]
  /** Lines without a place: their levels are kept in the book, but no ground is made of them. */
  readonly withoutPlace: readonly number[]
}

/**
 * Spot levels of a reduced level book.
 *
 * @param book - the book as reduced
 * @returns points with a place, points levelled twice, and lines without a place
 */
export function markedLevelsOf(book: ReducedLevelBook): MarkedLevels {
  const levels = new Map<string, MarkedLevel>()
  const again: { line: number; first: number; apartM: number }[] = []
  const withoutPlace: number[] = []
  for (const line of book.lines) {
    const level = levelAt(line)
    if (!level) {
      withoutPlace.push(line.line)
      continue
    }
    const place = `${level.eastM} ${level.northM}`
    const known = levels.get(place)
    if (known) again.push({ line: line.line, first: known.line, apartM: level.levelM - known.levelM })
    else levels.set(place, level)
  }
  return { levels: [...levels.values()], again, withoutPlace }
}

function levelAt({ line, mark, eastM, northM, adjustedM }: ReducedLevelLine): MarkedLevel | undefined {
  return eastM === undefined || northM === undefined
    ? undefined
    : { line, mark, eastM, northM, levelM: adjustedM }
}
