import type { GridFrame, PlanPoint, Ring } from './geometry.types'

/**
 * Outline of a set of cells: the outer edge of its largest part (cells joined by their sides).
 *
 * @param frame - where the grid lies
 * @param chosen - 1 for each cell of the set, 0 for the rest [count]
 * @returns outline anticlockwise along the cell edges [m]; undefined when no cell is chosen
 */
export function cellOutline(frame: GridFrame, chosen: ArrayLike<number>): Ring | undefined {
  const part = largestPart(frame, chosen)
  if (part.size === 0) return undefined
  return traceOuter(frame, part.of, part.first)
}

function largestPart(frame: GridFrame, chosen: ArrayLike<number>) {
  const cells = frame.columns * frame.rows
  const label = new Int32Array(cells).fill(-1)
  const queue = new Uint32Array(cells)
  let best = { label: -1, first: 0, size: 0 }
  for (let start = 0; start < cells; start++) {
    if (!chosen[start] || label[start] !== -1) continue
    const size = flood(frame, { chosen, label, queue }, start)
    if (size > best.size) best = { label: start, first: start, size }
  }
  return { size: best.size, first: best.first, of: (cell: number) => label[cell] === best.label }
}

interface Flood {
  readonly chosen: ArrayLike<number>
  readonly label: Int32Array
  readonly queue: Uint32Array
}

// Labels a part with its first cell's index; returns how many cells it has.
function flood(frame: GridFrame, state: Flood, start: number): number {
  const { columns, rows } = frame
  const { chosen, label, queue } = state
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

/** Steps along cell edges in (column, row from the north): east, south, west, north. */
const steps = [
  { x: 1, y: 0 },
  { x: 0, y: 1 },
  { x: -1, y: 0 },
  { x: 0, y: -1 },
] as const

// Walks the edge with the part on the right hand, then turns the outline anticlockwise.
function traceOuter(frame: GridFrame, inPart: (cell: number) => boolean, first: number): Ring {
  const has = (column: number, row: number) =>
    column >= 0 &&
    column < frame.columns &&
    row >= 0 &&
    row < frame.rows &&
    inPart(row * frame.columns + column)
  const start = { x: first % frame.columns, y: Math.floor(first / frame.columns) }
  const corners: PlanPoint[] = []
  let [x, y, heading] = [start.x, start.y, 0]
  do {
    const step = steps[heading] ?? steps[0]
    x += step.x
    y += step.y
    const next = turnAt(has, { x, y }, heading)
    if (next !== heading) corners.push(cornerAt(frame, x, y))
    heading = next
  } while (x !== start.x || y !== start.y || heading !== 0)
  return corners.reverse()
}

// Keeps to the part's own cells: right turns come first, so that cells touching only at a corner stay apart.
function turnAt(
  has: (column: number, row: number) => boolean,
  at: { x: number; y: number },
  heading: number,
): number {
  const cell = (direction: number, side: number) => {
    const ahead = steps[direction] ?? steps[0]
    const right = steps[(direction + 1) % 4] ?? steps[0]
    const sideways = side > 0 ? right : { x: -right.x, y: -right.y }
    return has(at.x + Math.min(0, ahead.x + sideways.x), at.y + Math.min(0, ahead.y + sideways.y))
  }
  if (!cell(heading, 1)) return (heading + 1) % 4
  return cell(heading, -1) ? (heading + 3) % 4 : heading
}

function cornerAt(frame: GridFrame, x: number, y: number): PlanPoint {
  return {
    eastM: frame.westM + x * frame.cellM,
    northM: frame.southM + (frame.rows - y) * frame.cellM,
  }
}
