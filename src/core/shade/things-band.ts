import type { GridFrame } from '#core/geometry'

/** A number that changes evenly over the grid: `from` at the centre of the north-west cell, and its change cell by cell. */
export interface Even {
  readonly from: number
  readonly perColumn: number
  readonly perRow: number
}

/**
 * A number that changes evenly over the plan, read on the grid.
 *
 * @param frame - where the grid lies
 * @param perEast - change for each metre eastward [1/m]
 * @param perNorth - change for each metre northward [1/m]
 * @param atOrigin - its value at the plan's origin [any]
 * @returns the same by column and row
 */
export function evenOver(frame: GridFrame, perEast: number, perNorth: number, atOrigin: number): Even {
  const { rows, cellM, westM, southM } = frame
  return {
    from: atOrigin + perEast * (westM + cellM / 2) + perNorth * (southM + (rows - 0.5) * cellM),
    perColumn: perEast * cellM,
    perRow: -perNorth * cellM,
  }
}

/**
 * A multiple of an evenly changing number, and something more.
 *
 * @param more - what is added throughout [any]
 * @param times - how often it counts [1]
 * @param of - the number
 * @returns the result
 */
export function evenTimes(more: number, times: number, of: Even): Even {
  return { from: more + times * of.from, perColumn: times * of.perColumn, perRow: times * of.perRow }
}

/**
 * A sum of two evenly changing numbers.
 *
 * @param one - the one
 * @param other - the other
 * @returns the sum
 */
export function evenSum(one: Even, other: Even): Even {
  return {
    from: one.from + other.from,
    perColumn: one.perColumn + other.perColumn,
    perRow: one.perRow + other.perRow,
  }
}

/** Cells on which several evenly changing numbers are all 0 or more. */
export interface Band {
  readonly above: readonly Even[]
  /** Northings between which all of them lie [m]. */
  readonly southM: number
  readonly northM: number
}

/** Numbers this little below nothing count as nothing [any]: what meets at a corner leaves no gap to rounding. */
const SLACK = 1e-9

/**
 * Visits every cell of a band.
 *
 * @param frame - where the grid lies
 * @param band - the band
 * @param visit - takes each row that the band crosses, its first column, and the one after its last
 */
export function walkBand(
  frame: GridFrame,
  band: Band,
  visit: (row: number, first: number, beyond: number) => void,
): void {
  const { above, southM, northM } = band
  const rowOf = (placeM: number) => frame.rows - 0.5 - (placeM - frame.southM) / frame.cellM
  const lastRow = Math.min(frame.rows - 1, Math.floor(rowOf(southM) + SLACK))
  for (let row = Math.max(0, Math.ceil(rowOf(northM) - SLACK)); row <= lastRow; row += 1) {
    let first = 0
    let last = frame.columns - 1
    for (let at = 0; at < above.length; at += 1) {
      const { from, perColumn, perRow } = above[at]!
      const here = from + perRow * row + SLACK
      if (perColumn > 0) first = Math.max(first, Math.ceil(-here / perColumn))
      else if (perColumn < 0) last = Math.min(last, Math.floor(-here / perColumn))
      else if (here < 0) last = -1
    }
    if (first <= last) visit(row, first, last + 1)
  }
}
