import type { GridFrame, PlanPoint, Ring } from './geometry.types'
import { sides } from './ring-measures'

/** A share this close to 0 or 1 is 0 or 1: rounding in the sums, not ground [m²/m²]. */
const SHARE_ROUNDING = 1e-9

/**
 * The exact part of every cell that lies inside an outline.
 *
 * Each side of the outline is cut at the cell lines it crosses; what it covers of a cell and of all cells east of it
 * is summed along the row. The work grows with the outline's length plus the number of cells.
 *
 * @param ring - outline in plan [m] that does not cross itself, in either sense of turning
 * @param frame - where the grid lies
 * @returns share of each cell inside [m²/m²], 0 to 1
 */
export function cellShares(ring: Ring, frame: GridFrame): Float64Array {
  const { columns, rows } = frame
  const shares = new Float64Array(columns * rows)
  const width = columns + 1
  const changes = new Float64Array(width * rows)
  for (const [from, to] of sides(ring)) addSide(changes, frame, toCells(frame, from), toCells(frame, to))
  for (let row = 0; row < rows; row++) {
    let covered = 0
    for (let column = 0; column < columns; column++) {
      covered += changes[row * width + column] ?? 0
      shares[row * columns + column] = settle(Math.abs(covered))
    }
  }
  return shares
}

/** A place counted in cells: east of the west edge, down from the north edge. */
interface CellPlace {
  readonly x: number
  readonly y: number
}

function toCells(frame: GridFrame, point: PlanPoint): CellPlace {
  return {
    x: (point.eastM - frame.westM) / frame.cellM,
    y: frame.rows - (point.northM - frame.southM) / frame.cellM,
  }
}

function addSide(changes: Float64Array, frame: GridFrame, from: CellPlace, to: CellPlace): void {
  if (from.y === to.y) return
  const sign = from.y < to.y ? 1 : -1
  const [top, bottom] = from.y < to.y ? [from, to] : [to, from]
  const lean = (bottom.x - top.x) / (bottom.y - top.y)
  const lastRow = Math.min(frame.rows, Math.ceil(bottom.y))
  for (let row = Math.max(0, Math.floor(top.y)); row < lastRow; row++) {
    const upper = Math.max(row, top.y)
    const lower = Math.min(row + 1, bottom.y)
    const [start, end] = [top.x + (upper - top.y) * lean, top.x + (lower - top.y) * lean]
    const strip = changes.subarray(row * (frame.columns + 1), (row + 1) * (frame.columns + 1))
    addInRow(strip, Math.min(start, end), Math.max(start, end), sign * (lower - upper))
  }
}

// Books a piece of a side within one row: it runs from x `west` to `east` and is `drop` rows high (signed).
function addInRow(row: Float64Array, west: number, east: number, drop: number): void {
  const columns = row.length - 1
  if (east - west < Number.EPSILON * Math.max(1, Math.abs(east))) {
    addPiece(row, (west + east) / 2, drop)
    return
  }
  const perColumn = drop / (east - west)
  if (west < 0) row[0] = (row[0] ?? 0) + perColumn * (Math.min(east, 0) - west)
  const last = Math.min(east, columns)
  let start = Math.max(west, 0)
  while (start < last) {
    const end = Math.min(Math.floor(start) + 1, last)
    addPieceAt(row, Math.floor(start), (start + end) / 2, perColumn * (end - start))
    start = end
  }
}

function addPiece(row: Float64Array, middle: number, drop: number): void {
  const columns = row.length - 1
  if (middle >= columns) return
  if (middle < 0) row[0] = (row[0] ?? 0) + drop
  else addPieceAt(row, Math.floor(middle), middle, drop)
}

// The part of the cell east of the piece counts here; from the next cell on the whole height counts.
function addPieceAt(row: Float64Array, column: number, middle: number, drop: number): void {
  const westPart = middle - column
  row[column] = (row[column] ?? 0) + drop * (1 - westPart)
  row[column + 1] = (row[column + 1] ?? 0) + drop * westPart
}

function settle(share: number): number {
  if (share < SHARE_ROUNDING) return 0
  return share > 1 - SHARE_ROUNDING ? 1 : share
}
