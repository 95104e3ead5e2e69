import type { GridFrame, PlanPoint, Ring } from './geometry.types'

/**
 * Centre of a cell.
 *
 * @param frame - where the grid lies
 * @param cell - index of the cell [count], row × columns + column
 * @returns its centre in plan [m]
 * @throws RangeError when the grid has no such cell
 */
export function cellCentre(frame: GridFrame, cell: number): PlanPoint {
  if (!Number.isInteger(cell) || cell < 0 || cell >= frame.columns * frame.rows)
    throw new RangeError(`cellCentre: cell must be 0 to ${frame.columns * frame.rows - 1}, got ${cell}`)
  const row = Math.floor(cell / frame.columns)
  const column = cell - row * frame.columns
  return {
    eastM: frame.westM + (column + 0.5) * frame.cellM,
    northM: frame.southM + (frame.rows - row - 0.5) * frame.cellM,
  }
}

/**
 * The cell under a place.
 *
 * @param frame - where the grid lies
 * @param point - the place in plan [m]
 * @returns index of the cell [count]; undefined off the grid
 */
export function cellAt(frame: GridFrame, point: PlanPoint): number | undefined {
  const column = Math.floor((point.eastM - frame.westM) / frame.cellM)
  const row = frame.rows - 1 - Math.floor((point.northM - frame.southM) / frame.cellM)
  if (column < 0 || column >= frame.columns || row < 0 || row >= frame.rows) return undefined
  return row * frame.columns + column
}

/**
 * Outline of a cell.
 *
 * @param frame - where the grid lies
 * @param cell - index of the cell [count]
 * @returns its four corners anticlockwise [m]
 * @throws RangeError when the grid has no such cell
 */
export function cellRing(frame: GridFrame, cell: number): Ring {
  const { eastM, northM } = cellCentre(frame, cell)
  const half = frame.cellM / 2
  return [
    { eastM: eastM - half, northM: northM - half },
    { eastM: eastM + half, northM: northM - half },
    { eastM: eastM + half, northM: northM + half },
    { eastM: eastM - half, northM: northM + half },
  ]
}

/** How far an outline may poke over a cell line before a further row is laid [cells]. */
const SNAP_CELLS = 1e-6

/**
 * The grid that covers an outline, its lines at whole multiples of the cell size from the plot's origin.
 *
 * @param ring - outline in plan [m], at least one corner
 * @param cellM - side of a cell [m], more than 0
 * @returns the smallest such grid
 * @throws RangeError when the cell size is not above 0 or the outline is empty
 */
export function frameAround(ring: Ring, cellM: number): GridFrame {
  if (!(cellM > 0)) throw new RangeError(`frameAround: cellM must be above 0, got ${cellM}`)
  const box = boxAround(ring)
  const west = Math.floor(box.westM / cellM + SNAP_CELLS)
  const south = Math.floor(box.southM / cellM + SNAP_CELLS)
  const east = Math.ceil(box.eastM / cellM - SNAP_CELLS)
  const north = Math.ceil(box.northM / cellM - SNAP_CELLS)
  return {
    columns: Math.max(1, east - west),
    rows: Math.max(1, north - south),
    cellM,
    westM: west * cellM,
    southM: south * cellM,
  }
}

/**
 * The upright box around some places.
 *
 * @param points - places in plan [m], at least one
 * @returns its four sides [m]
 * @throws RangeError when there is no place
 */
export function boxAround(points: readonly PlanPoint[]) {
  if (points.length === 0) throw new RangeError('boxAround: needs 1 place or more, got 0')
  let [westM, southM, eastM, northM] = [Infinity, Infinity, -Infinity, -Infinity]
  for (const point of points) {
    westM = Math.min(westM, point.eastM)
    eastM = Math.max(eastM, point.eastM)
    southM = Math.min(southM, point.northM)
    northM = Math.max(northM, point.northM)
  }
  return { westM, southM, eastM, northM }
}
