import { cellAt, cellCentre, type PlanPoint } from '#core/geometry'
import { placeLevelM } from './place-ground'
import type { ShadingGround } from './shade.types'
import type { GroundLevel } from './standing-thing.types'

/**
 * Tells the level of the ground on which something stands: of the plot under it, or of the nearest cell of the plot.
 *
 * @param ground - the grid of levels
 * @returns looks up the level at a place [m]
 * @throws RangeError when looked up and no cell lies in the plot
 */
export function footLevels(ground: ShadingGround): GroundLevel {
  let rim: readonly RimCell[] | undefined
  return (at) => {
    const cell = cellAt(ground.frame, at)
    if (cell !== undefined && ground.share[cell]! > 0) return placeLevelM(ground, at)
    rim ??= rimCells(ground)
    return nearestLevelM(rim, at)
  }
}

interface RimCell extends PlanPoint {
  readonly levelM: number
}

// Cells of the plot with a neighbour outside it: the nearest cell to any place off the plot is among them.
function rimCells({ frame, levelM, share }: ShadingGround): readonly RimCell[] {
  const { columns, rows } = frame
  const outside = (column: number, row: number) =>
    column < 0 || row < 0 || column >= columns || row >= rows || !(share[row * columns + column]! > 0)
  const rim: RimCell[] = []
  for (let cell = 0; cell < share.length; cell += 1) {
    if (!(share[cell]! > 0)) continue
    const row = Math.floor(cell / columns)
    const column = cell - row * columns
    const onRim =
      outside(column - 1, row) ||
      outside(column + 1, row) ||
      outside(column, row - 1) ||
      outside(column, row + 1)
    if (onRim) rim.push({ ...cellCentre(frame, cell), levelM: levelM[cell]! })
  }
  return rim
}

function nearestLevelM(rim: readonly RimCell[], at: PlanPoint): number {
  let [least, found] = [Infinity, NaN]
  for (const { eastM, northM, levelM } of rim) {
    const away = (eastM - at.eastM) ** 2 + (northM - at.northM) ** 2
    if (away < least) [least, found] = [away, levelM]
  }
  if (least === Infinity) throw new RangeError('footLevels: at least one cell must lie in the plot, got 0')
  return found
}
