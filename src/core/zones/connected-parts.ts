import type { GridFrame } from '#core/geometry'

/** A division of the plot into numbered parts. */
export interface Parts {
  /** Part of each cell, 0 to count - 1; -1 outside. */
  readonly partOfCell: Int32Array
  readonly count: number
}

/**
 * Parts of the plot whose cells are of one class and joined side to side.
 *
 * @param classOfCell - class of each cell, -1 outside
 * @param frame - where the cells lie
 * @returns numbered parts, in the order of their first cell
 */
export function connectedParts(classOfCell: Int32Array, frame: GridFrame): Parts {
  const partOfCell = new Int32Array(classOfCell.length).fill(-1)
  let count = 0
  classOfCell.forEach((kind, cell) => {
    if (kind < 0 || (partOfCell[cell] ?? -1) >= 0) return
    flood(classOfCell, frame, { partOfCell, cell, part: count })
    count++
  })
  return { partOfCell, count }
}

interface Flooding {
  readonly partOfCell: Int32Array
  readonly cell: number
  readonly part: number
}

function flood(classOfCell: Int32Array, frame: GridFrame, { partOfCell, cell, part }: Flooding): void {
  const kind = classOfCell[cell]
  const { columns } = frame
  const waiting = [cell]
  partOfCell[cell] = part
  const visit = (near: number) => {
    if (classOfCell[near] !== kind || partOfCell[near] !== -1) return
    partOfCell[near] = part
    waiting.push(near)
  }
  for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
    const column = at % columns
    if (at >= columns) visit(at - columns)
    if (at + columns < classOfCell.length) visit(at + columns)
    if (column > 0) visit(at - 1)
    if (column < columns - 1) visit(at + 1)
  }
}
