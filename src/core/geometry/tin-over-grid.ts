import type { GridFrame, LevelPoint, PlanPoint, Tin } from './geometry.types'

/** A sloping plane: its level over a place and its two gradients. */
export interface Plane {
  readonly through: LevelPoint
  /** Rise per metre eastward and northward [m/m]. */
  readonly eastGradient: number
  readonly northGradient: number
}

/** Slack to each side of a row of cells when looking which columns a triangle reaches [cells]. */
const ROW_SLACK = 1e-6

/** How far outside a triangle a cell centre still counts as on its edge, as a share of the triangle. */
const EDGE_SHARE = 1e-9

/**
 * Which triangle lies over the centre of each cell.
 *
 * @param tin - the triangles
 * @param frame - where the grid lies
 * @returns number of the triangle over each cell [count], -1 where there is none
 */
export function trianglesOverGrid(tin: Tin, frame: GridFrame): Int32Array {
  const over = new Int32Array(frame.columns * frame.rows).fill(-1)
  for (let triangle = 0; triangle * 3 < tin.corners.length; triangle++) {
    const corners = cornersOf(tin, triangle)
    if (corners) mark(over, frame, triangle, corners)
  }
  return over
}

/**
 * The plane through a triangle.
 *
 * @param tin - the triangles
 * @param triangle - number of the triangle [count], the first being 0
 * @returns its plane; undefined when the triangle has no area
 */
export function trianglePlane(tin: Tin, triangle: number): Plane | undefined {
  const corners = cornersOf(tin, triangle)
  if (!corners) return undefined
  const [a, b, c] = corners
  const [bx, by, bz] = [b.eastM - a.eastM, b.northM - a.northM, b.levelM - a.levelM]
  const [cx, cy, cz] = [c.eastM - a.eastM, c.northM - a.northM, c.levelM - a.levelM]
  const doubled = bx * cy - cx * by
  if (doubled === 0) return undefined
  return {
    through: a,
    eastGradient: (bz * cy - cz * by) / doubled,
    northGradient: (cz * bx - bz * cx) / doubled,
  }
}

/**
 * Level of a plane over a place.
 *
 * @param plane - the plane
 * @param point - the place [m]
 * @returns level [m]
 */
export function levelOnPlaneM(plane: Plane, point: PlanPoint): number {
  return (
    plane.through.levelM +
    plane.eastGradient * (point.eastM - plane.through.eastM) +
    plane.northGradient * (point.northM - plane.through.northM)
  )
}

/**
 * How thick a triangle is: its shortest height.
 *
 * @param tin - the triangles
 * @param triangle - number of the triangle [count]
 * @returns shortest of its three heights in plan [m], 0 when it has no area
 */
export function triangleThicknessM(tin: Tin, triangle: number): number {
  const corners = cornersOf(tin, triangle)
  if (!corners) return 0
  const [a, b, c] = corners
  const longestM = Math.max(gapM(a, b), gapM(b, c), gapM(c, a))
  return longestM === 0 ? 0 : Math.abs(doubledArea(a, b, c)) / longestM
}

type Corners = readonly [LevelPoint, LevelPoint, LevelPoint]

function cornersOf(tin: Tin, triangle: number): Corners | undefined {
  const at = triangle * 3
  const a = tin.points[tin.corners[at] ?? -1]
  const b = tin.points[tin.corners[at + 1] ?? -1]
  const c = tin.points[tin.corners[at + 2] ?? -1]
  return a && b && c ? [a, b, c] : undefined
}

function mark(over: Int32Array, frame: GridFrame, triangle: number, [a, b, c]: Corners): void {
  const doubled = doubledArea(a, b, c)
  if (doubled === 0) return
  const toColumn = (eastM: number) => (eastM - frame.westM) / frame.cellM - 0.5
  const toRow = (northM: number) => frame.rows - 0.5 - (northM - frame.southM) / frame.cellM
  const rows = range(toRow(a.northM), toRow(b.northM), toRow(c.northM))
  const place = { eastM: 0, northM: 0 }
  for (let row = Math.max(0, rows.first); row <= Math.min(frame.rows - 1, rows.last); row++) {
    place.northM = frame.southM + (frame.rows - row - 0.5) * frame.cellM
    const [west, east] = spanAt([a, b, c], place.northM, frame.cellM * ROW_SLACK)
    const firstColumn = Math.max(0, Math.ceil(toColumn(west) - 1e-6))
    const lastColumn = Math.min(frame.columns - 1, Math.floor(toColumn(east) + 1e-6))
    for (let column = firstColumn; column <= lastColumn; column++) {
      const cell = row * frame.columns + column
      if (over[cell] !== -1) continue
      place.eastM = frame.westM + (column + 0.5) * frame.cellM
      const shareA = doubledArea(place, b, c) / doubled
      const shareB = doubledArea(place, c, a) / doubled
      const least = Math.min(shareA, shareB, 1 - shareA - shareB)
      if (least >= -EDGE_SHARE) over[cell] = triangle
    }
  }
}

// From west to east, what a triangle has of a line that runs level across the plan.
function spanAt(corners: Corners, northM: number, slackM: number): [number, number] {
  let [west, east] = [Infinity, -Infinity]
  for (let at = 0; at < 3; at++) {
    const [from, to] = [corners[at]!, corners[(at + 1) % 3]!]
    const riseM = to.northM - from.northM
    if (Math.min(from.northM, to.northM) > northM + slackM) continue
    if (Math.max(from.northM, to.northM) < northM - slackM) continue
    for (const lineM of [northM - slackM, northM + slackM]) {
      const share = riseM === 0 ? 0 : Math.min(1, Math.max(0, (lineM - from.northM) / riseM))
      const crossM = from.eastM + share * (to.eastM - from.eastM)
      const farM = riseM === 0 ? to.eastM : crossM
      west = Math.min(west, crossM, farM)
      east = Math.max(east, crossM, farM)
    }
  }
  return [west, east]
}

// Whole numbers from one value to another, with a hair's breadth to both sides.
function range(one: number, two: number, three: number) {
  return {
    first: Math.ceil(Math.min(one, two, three) - 1e-6),
    last: Math.floor(Math.max(one, two, three) + 1e-6),
  }
}

function doubledArea(a: PlanPoint, b: PlanPoint, c: PlanPoint): number {
  return (b.eastM - a.eastM) * (c.northM - a.northM) - (c.eastM - a.eastM) * (b.northM - a.northM)
}

function gapM(one: PlanPoint, other: PlanPoint): number {
  return Math.hypot(one.eastM - other.eastM, one.northM - other.northM)
}
