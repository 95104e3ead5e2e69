import type { GridFrame, PlanPoint } from '#core/geometry'
import { WALL_HALF_M } from './tolerances'
import { besidePiece, sidesAt, wallPieces, type BesideWall, type Wall, type WallPiece } from './walls'

/** A cell centre this near to a wall's line stands right on it [m]: nearer is rounding. */
const ON_LINE_M = 1e-9

/**
 * Gives cells whose centre lies on a wall the level of the side it is on, instead of one between both.
 * A centre exactly on the line takes the lower ground.
 *
 * @param levelM - level of each cell [m]; those on a wall are set
 * @param frame - where the grid lies
 * @param walls - the walls
 */
export function stepAtWalls(levelM: Float64Array, frame: GridFrame, walls: readonly Wall[]): void {
  const nearestM = new Map<number, number>()
  for (const piece of wallPieces(walls))
    eachCellNear(piece, frame, (cell, place) => {
      const beside = besidePiece(piece, place)
      if (beside.gapM > WALL_HALF_M || beside.gapM >= (nearestM.get(cell) ?? Infinity)) return
      nearestM.set(cell, beside.gapM)
      levelM[cell] = sideLevelM(beside)
    })
}

function sideLevelM(beside: BesideWall): number {
  const { leftM, rightM } = sidesAt(beside)
  if (Math.abs(beside.leftwardM) <= ON_LINE_M) return Math.min(leftM, rightM)
  return beside.leftwardM > 0 ? leftM : rightM
}

// Cells whose centre may lie within reach of a piece: row by row, the columns that it passes.
function eachCellNear(
  { from, to }: WallPiece,
  frame: GridFrame,
  visit: (cell: number, place: PlanPoint) => void,
): void {
  const { columns, rows, cellM, westM, southM } = frame
  const [low, high] = from.northM < to.northM ? [from, to] : [to, from]
  const rowAt = (northM: number) => rows - 0.5 - (northM - southM) / cellM
  const firstRow = Math.max(0, Math.ceil(rowAt(high.northM + WALL_HALF_M)))
  const lastRow = Math.min(rows - 1, Math.floor(rowAt(low.northM - WALL_HALF_M)))
  const riseM = high.northM - low.northM
  const eastAt = (northM: number) => {
    const share = riseM === 0 ? 0 : Math.min(1, Math.max(0, (northM - low.northM) / riseM))
    return low.eastM + share * (high.eastM - low.eastM)
  }
  for (let row = firstRow; row <= lastRow; row++) {
    const northM = southM + (rows - row - 0.5) * cellM
    const ends =
      riseM <= 2 * WALL_HALF_M
        ? [low.eastM, high.eastM]
        : [eastAt(northM - 2 * WALL_HALF_M), eastAt(northM + 2 * WALL_HALF_M)]
    const columnAt = (eastM: number) => (eastM - westM) / cellM - 0.5
    const first = Math.max(0, Math.ceil(columnAt(Math.min(...ends) - WALL_HALF_M)))
    const last = Math.min(columns - 1, Math.floor(columnAt(Math.max(...ends) + WALL_HALF_M)))
    for (let column = first; column <= last; column++)
      visit(row * columns + column, { eastM: westM + (column + 0.5) * cellM, northM })
  }
}
