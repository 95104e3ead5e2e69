import type { GridFrame } from './geometry.types'

/** Cells joined to one another by their sides. */
export interface CellPart {
  /** The part's first cell, row by row from the north-west [count]. */
  readonly first: number
  /** How many cells it has [count]. */
  readonly cells: number
}

/**
 * The separate parts of a set of cells.
 *
 * @param frame - where the grid lies
 * @param chosen - 1 for each cell of the set, 0 for the rest [count]
 * @returns the parts, the largest first and of equal ones the northernmost, and for each cell of the set the first cell of its
 * part [count]; -1 elsewhere
 */
export function cellParts(
  frame: GridFrame,
  chosen: ArrayLike<number>,
): { readonly parts: readonly CellPart[]; readonly label: Int32Array } {
  const cells = frame.columns * frame.rows
  const label = new Int32Array(cells).fill(-1)
  const queue = new Uint32Array(cells)
  const parts: CellPart[] = []
  for (let start = 0; start < cells; start++)
    if (chosen[start] && label[start] === -1)
      parts.push({ first: start, cells: flood(frame, { chosen, label, queue }, start) })
  return { parts: parts.sort((one, other) => other.cells - one.cells || one.first - other.first), label }
}

interface Flood {
  readonly chosen: ArrayLike<number>
  readonly label: Int32Array
  readonly queue: Uint32Array
}

// Labels a part with its first cell's index; returns how many cells it has.
function flood(frame: GridFrame, { chosen, label, queue }: Flood, start: number): number {
  const { columns, rows } = frame
  let end = 1
  queue[0] = start
  label[start] = start
  const visit = (cell: number) => {
    if (!chosen[cell] || label[cell] !== -1) return
    label[cell] = start
    queue[end++] = cell
  }
  for (let at = 0; at < end; at++) {
    const cell = queue[at] ?? 0
    const column = cell % columns
    if (column > 0) visit(cell - 1)
    if (column < columns - 1) visit(cell + 1)
    if (cell >= columns) visit(cell - columns)
    if (cell < columns * (rows - 1)) visit(cell + columns)
  }
  return end
}
