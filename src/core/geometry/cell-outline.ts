import { cellParts } from './cell-parts'
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
  const { label, parts } = cellParts(frame, chosen)
  const best = parts[0]
  return {
    size: best?.cells ?? 0,
    first: best?.first ?? 0,
    of: (cell: number) => label[cell] === best?.first,
  }
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
