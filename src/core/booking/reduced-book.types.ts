import type { Allowable } from './methods.schema'

/** One line of a level book, with what follows from it. */
export interface ReducedLevelLine {
  /** Line of the book, counted from 1. */
  readonly line: number
  readonly mark?: string | undefined
  readonly remark?: string | undefined
  readonly backM?: number | undefined
  readonly interM?: number | undefined
  readonly foreM?: number | undefined
  /** Rise from the point before [m]; undefined where it falls, and on the first line. */
  readonly riseM: number | undefined
  /** Fall from the point before [m]; undefined where it rises, and on the first line. */
  readonly fallM: number | undefined
  /** Height of collimation of the set-up that begins on this line [m]; undefined on all other lines. */
  readonly collimationM: number | undefined
  /** Set-up that the point was sighted from, counted from 1; 0 for the first line, which is known. */
  readonly setUp: number
  /** Level as reduced [m]. */
  readonly levelM: number
  /** Level after sharing out the misclosure [m]; the reduced one where nothing is shared out. */
  readonly adjustedM: number
  readonly distanceM?: number | undefined
  readonly eastM?: number | undefined
  readonly northM?: number | undefined
}

/** A sum done in two ways that must agree. */
export interface BookCheck {
  readonly what: string
  /** Line of the book, for a level worked out by hand. */
  readonly line?: number
  /** What it must come to [m]. */
  readonly expected: number
  /** What it comes to [m]. */
  readonly found: number
  readonly ok: boolean
}

/** How a book closes on a known level. */
export interface BookClosing {
  /** Level reduced at the end less the known one [m]. */
  readonly misclosureM: number
  /** Added to each set-up's levels when it is shared out equally [m]. */
  readonly perSetUpM: number
  /** The rule it is held against, and what that allows here; undefined when none was chosen. */
  readonly limit:
    { readonly allowable: Allowable; readonly limitM: number; readonly within: boolean } | undefined
}

export interface ReducedLevelBook {
  readonly reduction: 'rise-and-fall' | 'height-of-collimation'
  readonly lines: readonly ReducedLevelLine[]
  /** Number of set-ups of the level. */
  readonly setUps: number
  readonly sums: {
    readonly backM: number
    readonly foreM: number
    readonly riseM: number
    readonly fallM: number
  }
  readonly checks: readonly BookCheck[]
  /** Undefined when the book does not end on a known level: then nothing shows a mistake in a reading. */
  readonly closing: BookClosing | undefined
  /** Whether the misclosure was shared out. */
  readonly adjusted: boolean
}

/** A point of a book on its way down a line. */
export interface BookStation {
  /** Line of the book, counted from 1; 0 for the start of a book that has no line for it. */
  readonly line: number
  readonly mark: string | undefined
  /** Plan distance from the start [m]. */
  readonly distanceM: number
  readonly levelM: number
}
