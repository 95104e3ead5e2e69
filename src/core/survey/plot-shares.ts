import {
  boxAround,
  cellRing,
  cellShares,
  clipRing,
  sharedAreaM2,
  type GridFrame,
  type Ring,
} from '#core/geometry'

/** A share this close to 0 is 0: rounding of areas, not ground [m²/m²]. */
const SHARE_ROUNDING = 1e-9

/**
 * The exact part of every cell that is ground of the plot: inside the boundary and in no hole.
 *
 * @param boundary - outline of the plot [m]
 * @param holes - parts that are no ground [m], which do not overlap one another
 * @param frame - where the grid lies
 * @returns share of each cell [m²/m²], 0 to 1
 */
export function plotShares(boundary: Ring, holes: readonly Ring[], frame: GridFrame): Float64Array {
  const share = cellShares(boundary, frame)
  if (holes.length === 0) return share
  // A cell that two holes cut must lose both, so what each takes is reckoned from the boundary's own share.
  const inside = share.slice()
  for (const hole of holes) takeHole({ share, inside }, boundary, hole, frame)
  return share
}

interface Shares {
  readonly share: Float64Array
  readonly inside: Float64Array
}

function takeHole({ share, inside }: Shares, boundary: Ring, hole: Ring, frame: GridFrame): void {
  const part = partOf(frame, hole)
  if (!part) return
  const holeShare = cellShares(hole, part.frame)
  for (let row = 0; row < part.frame.rows; row++)
    for (let column = 0; column < part.frame.columns; column++) {
      const held = holeShare[row * part.frame.columns + column]!
      if (held === 0) continue
      const cell = (row + part.row) * frame.columns + column + part.column
      const lost = commonShare(inside[cell]!, held, () => commonAreaShare(boundary, hole, cell, frame))
      const left = share[cell]! - lost
      share[cell] = left < SHARE_ROUNDING ? 0 : left
    }
}

// Part of a cell that lies in the boundary and in the hole: plain unless both cut the cell.
function commonShare(inside: number, held: number, exact: () => number): number {
  if (inside === 0 || inside === 1 || held === 1) return inside * held
  return exact()
}

function commonAreaShare(boundary: Ring, hole: Ring, cell: number, frame: GridFrame): number {
  const window = cellRing(frame, cell)
  return sharedAreaM2(clipRing(boundary, window), clipRing(hole, window)) / frame.cellM ** 2
}

// The rows and columns of a grid that an outline reaches.
function partOf(frame: GridFrame, ring: Ring) {
  const { columns, rows, cellM, westM, southM } = frame
  const box = boxAround(ring)
  const first = Math.max(0, Math.floor((box.westM - westM) / cellM))
  const last = Math.min(columns, Math.ceil((box.eastM - westM) / cellM))
  const bottom = Math.max(0, Math.floor((box.southM - southM) / cellM))
  const top = Math.min(rows, Math.ceil((box.northM - southM) / cellM))
  if (last <= first || top <= bottom) return undefined
  return {
    column: first,
    row: rows - top,
    frame: {
      columns: last - first,
      rows: top - bottom,
      cellM,
      westM: westM + first * cellM,
      southM: southM + bottom * cellM,
    },
  }
}
