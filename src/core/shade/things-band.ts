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
  const eastM = frame.westM + frame.cellM / 2
  const northM = frame.southM + (frame.rows - 0.5) * frame.cellM
  return {
    from: atOrigin + perEast * eastM + perNorth * northM,
    perColumn: perEast * frame.cellM,
    perRow: -perNorth * frame.cellM,
  }
}

/**
 * A sum of evenly changing numbers.
 *
 * @param constant - what is added throughout [any]
 * @param terms - each number, and how often it counts [1]
 * @returns the sum
 */
export function evenSum(constant: number, ...terms: readonly (readonly [times: number, of: Even])[]): Even {
  const sum = (of: (each: Even) => number) => terms.reduce((all, [times, each]) => all + times * of(each), 0)
  return {
    from: constant + sum((each) => each.from),
    perColumn: sum((each) => each.perColumn),
    perRow: sum((each) => each.perRow),
  }
}

/** Numbers this little below nothing count as nothing [any]: what meets at a corner leaves no gap to rounding. */
const SLACK = 1e-9

/** Cells on which several evenly changing numbers are all 0 or more. */
export interface Band {
  readonly above: readonly Even[]
  /** Northings of places between which all of its cells lie [m]. */
  readonly northsM: readonly number[]
}

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
  const [firstRow, lastRow] = rowsBetween(frame, band.northsM)
  for (let row = firstRow; row <= lastRow; row += 1) {
    let first = 0
    let last = frame.columns - 1
    for (const { from, perColumn, perRow } of band.above) {
      const here = from + perRow * row + SLACK
      if (perColumn > 0) first = Math.max(first, Math.ceil(-here / perColumn))
      else if (perColumn < 0) last = Math.min(last, Math.floor(-here / perColumn))
      else if (here < 0) last = -1
    }
    if (first <= last) visit(row, first, last + 1)
  }
}

function rowsBetween(
  { rows, southM, cellM }: GridFrame,
  northsM: readonly number[],
): readonly [number, number] {
  const rowOf = (northM: number) => rows - 0.5 - (northM - southM) / cellM
  const first = Math.ceil(rowOf(Math.max(...northsM)) - SLACK)
  const last = Math.floor(rowOf(Math.min(...northsM)) + SLACK)
  return [Math.max(0, first), Math.min(rows - 1, last)]
}
