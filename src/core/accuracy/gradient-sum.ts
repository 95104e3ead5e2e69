import type { GridFrame } from '#core/geometry'
import { cornerWeight, type TriangleTable } from './triangle-table'

/** Most points that the window of one cell can rest on: three under each of eight cells [points]. */
const MOST_POINTS = 24

/** The two gradients of a cell as sums over measured points, with room to be filled again for the next cell. */
export interface GradientSum {
  count: number
  readonly points: Int32Array
  /** Weight of each point's level in the gradient east and in the one north [1/m]. */
  readonly east: Float64Array
  readonly north: Float64Array
}

/**
 * Room for the sums of one cell at a time.
 *
 * @returns a sum over no point
 */
export function gradientSum(): GradientSum {
  return {
    count: 0,
    points: new Int32Array(MOST_POINTS),
    east: new Float64Array(MOST_POINTS),
    north: new Float64Array(MOST_POINTS),
  }
}

/** What the gradients of cells are read from. */
export interface Window {
  readonly frame: GridFrame
  readonly table: TriangleTable
  /** Triangle of every cell. */
  readonly triangleOf: Int32Array
  /** Part of every cell inside the plot. */
  readonly share: Float64Array
}

/**
 * Writes the gradients of a cell as sums over measured points, just as the slope is read: from the eight cells around, the
 * nearer counting double. At the edge of the plot it is the plane of the cell's own triangle.
 *
 * @param sum - filled anew
 * @param window - cells and triangles
 * @param cell - index of the cell [count]
 * @see Horn 1981, Proceedings of the IEEE 69: 14-47
 */
export function sumGradients(sum: GradientSum, window: Window, cell: number): void {
  const { frame, table, triangleOf } = window
  sum.count = 0
  const own = triangleOf[cell]!
  if (!mixed(window, cell, own)) {
    for (let at = own * 3; at < own * 3 + 3; at++)
      add(sum, table.corners[at]!, table.eastWeight[at]!, table.northWeight[at]!)
    return
  }
  const column = cell % frame.columns
  const row = (cell - column) / frame.columns
  const unit = 1 / (8 * frame.cellM)
  for (let down = -1; down <= 1; down++)
    for (let across = -1; across <= 1; across++) {
      const triangle = triangleOf[cell + down * frame.columns + across]!
      const eastM = frame.westM + (column + across + 0.5) * frame.cellM
      const northM = frame.southM + (frame.rows - row - down - 0.5) * frame.cellM
      const east = across * (2 - Math.abs(down)) * unit
      const north = -down * (2 - Math.abs(across)) * unit
      if (east === 0 && north === 0) continue
      for (let at = triangle * 3; at < triangle * 3 + 3; at++) {
        const weight = cornerWeight(table, at, eastM, northM)
        add(sum, table.corners[at]!, weight * east, weight * north)
      }
    }
}

/**
 * The gradient that a sum over points comes to.
 *
 * @param weights - weights of the points [1/m]: the sum's own, east or north
 * @param sum - the points
 * @param table - their levels
 * @returns rise per metre [m/m]
 */
export function gradientOf(weights: Float64Array, sum: GradientSum, table: TriangleTable): number {
  const first = table.levelM[sum.points[0]!]!
  let gradient = 0
  for (let at = 0; at < sum.count; at++) gradient += weights[at]! * (table.levelM[sum.points[at]!]! - first)
  return gradient
}

// Whether all eight cells around lie in the plot, and not all under the cell's own triangle.
function mixed({ frame, triangleOf, share }: Window, cell: number, own: number): boolean {
  const column = cell % frame.columns
  const row = (cell - column) / frame.columns
  if (column === 0 || row === 0 || column === frame.columns - 1 || row === frame.rows - 1) return false
  let others = false
  for (let down = -1; down <= 1; down++)
    for (let across = -1; across <= 1; across++) {
      const other = cell + down * frame.columns + across
      if (!(share[other]! > 0)) return false
      others ||= triangleOf[other] !== own
    }
  return others
}

function add(sum: GradientSum, point: number, east: number, north: number): void {
  let at = 0
  while (at < sum.count && sum.points[at] !== point) at++
  if (at === sum.count) {
    sum.count++
    sum.points[at] = point
    sum.east[at] = 0
    sum.north[at] = 0
  }
  sum.east[at]! += east
  sum.north[at]! += north
}
