import type { Surface } from '#core/survey'
import { fitRoughness, type Residual } from './fit-roughness'
import { unitVariance } from './power-variogram'

/** Cells that roughness is judged from; more would not change it [cells]. */
const ENOUGH_CELLS = 20_000

/**
 * How rough a grid's ground is: every cell left out and read from the four beside it.
 *
 * @param surface - the ground as cells
 * @param levelSdM - standard error of each level [m]
 * @returns coefficient of the power variogram [m² at 1 m]; undefined with too few cells
 */
export function gridRoughness(surface: Surface, levelSdM: Float32Array): number | undefined {
  const { frame, levelM, share } = surface
  const unit = crossUnit(frame.cellM)
  const step = Math.max(1, Math.floor(share.length / ENOUGH_CELLS))
  const residuals: Residual[] = []
  for (let cell = frame.columns; cell < share.length - frame.columns; cell += step) {
    const column = cell % frame.columns
    if (column === 0 || column === frame.columns - 1 || !share[cell]) continue
    const beside = [cell - 1, cell + 1, cell - frame.columns, cell + frame.columns]
    if (!beside.every((other) => share[other]! > 0)) continue
    const missM = levelM[cell]! - beside.reduce((sum, other) => sum + levelM[other]! / 4, 0)
    const measuringM2 = levelSdM[cell]! ** 2 * (1 + 1 / 4)
    residuals.push({ squareM2: missM * missM, measuringM2, unit })
  }
  return fitRoughness(residuals)
}

// What four cells around miss the middle one by, on ground whose coefficient is 1.
function crossUnit(cellM: number): number {
  return unitVariance([
    { xM: 0, yM: 0, weight: 1 },
    { xM: cellM, yM: 0, weight: -1 / 4 },
    { xM: -cellM, yM: 0, weight: -1 / 4 },
    { xM: 0, yM: cellM, weight: -1 / 4 },
    { xM: 0, yM: -cellM, weight: -1 / 4 },
  ])
}
