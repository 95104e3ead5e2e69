import type { GridFrame } from '#core/geometry'

/** How often the filter is run. */
const PASSES = 2

/**
 * Lets each cell take the class that most of the nine cells about it have (majority filter); a cell keeps its own
 * class when no other has more.
 *
 * @param classOfCell - class of each cell, -1 outside
 * @param frame - where the cells lie
 * @returns smoothed classes; cells outside stay outside
 */
export function smoothClasses(classOfCell: Int32Array, frame: GridFrame): Int32Array {
  let smooth = classOfCell
  for (let pass = 0; pass < PASSES; pass++) smooth = smoothOnce(smooth, frame)
  return smooth
}

function smoothOnce(classes: Int32Array, frame: GridFrame): Int32Array {
  const smooth = classes.slice()
  const votes = new Int32Array(BLOCK_CELLS)
  for (let cell = 0; cell < classes.length; cell++) {
    const own = classes[cell]!
    if (own >= 0) smooth[cell] = winner(votes, takeVotes(votes, classes, frame, cell), own)
  }
  return smooth
}

/** The cell and the eight about it. */
const BLOCK_CELLS = 9

// Fills `votes` with the classes of the cell and of those about it that lie in the plot; returns how many.
function takeVotes(votes: Int32Array, classes: Int32Array, frame: GridFrame, cell: number): number {
  const column = cell % frame.columns
  const row = (cell - column) / frame.columns
  const lastRow = Math.min(frame.rows - 1, row + 1)
  const lastColumn = Math.min(frame.columns - 1, column + 1)
  let count = 0
  for (let r = Math.max(0, row - 1); r <= lastRow; r++)
    for (let c = Math.max(0, column - 1); c <= lastColumn; c++) {
      const vote = classes[r * frame.columns + c]!
      if (vote >= 0) votes[count++] = vote
    }
  return count
}

// The class with most votes; a cell's own wins a tie, then the one met first.
function winner(votes: Int32Array, count: number, own: number): number {
  let best = own
  let most = countOf(votes, count, own)
  for (let at = 0; at < count && most < count; at++) {
    const vote = votes[at]!
    if (vote === best) continue
    const cast = countOf(votes, count, vote)
    if (cast <= most) continue
    best = vote
    most = cast
  }
  return best
}

function countOf(votes: Int32Array, count: number, wanted: number): number {
  let found = 0
  for (let at = 0; at < count; at++) if (votes[at] === wanted) found++
  return found
}
