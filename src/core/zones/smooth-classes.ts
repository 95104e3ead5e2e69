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
  for (let pass = 0; pass < PASSES; pass++) smooth = smooth.map((_, cell) => majority(smooth, frame, cell))
  return smooth
}

function majority(classes: Int32Array, frame: GridFrame, cell: number): number {
  const own = classes[cell] ?? -1
  if (own < 0) return own
  const votes = new Map<number, number>()
  for (const near of block(frame, cell)) {
    const vote = classes[near] ?? -1
    if (vote >= 0) votes.set(vote, (votes.get(vote) ?? 0) + 1)
  }
  let best = own
  for (const [vote, count] of votes) if (count > (votes.get(best) ?? 0)) best = vote
  return best
}

// The cell and those about it that lie in the frame.
function block(frame: GridFrame, cell: number): number[] {
  const row = Math.floor(cell / frame.columns)
  const column = cell % frame.columns
  const cells: number[] = []
  for (let r = Math.max(0, row - 1); r <= Math.min(frame.rows - 1, row + 1); r++)
    for (let c = Math.max(0, column - 1); c <= Math.min(frame.columns - 1, column + 1); c++)
      cells.push(r * frame.columns + c)
  return cells
}
