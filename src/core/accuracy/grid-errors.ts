import type { GridSurvey, Surface } from '#core/survey'
import type { Terrain } from '#core/terrain'
import { degToGradient, toRadians } from '#core/units'
import type { CellErrors } from './cell-errors.types'
import type { MeasuringErrors } from './measuring-errors'
import { slopeErrorDeg } from './slope-error'

/** Sum of the squared weights of one gradient of a 3 × 3 window, in 1/64 of the cell's square [1] (1, 2, 1 on both sides). */
const HORN_SQUARES = 12 / 64

/**
 * Variance of one gradient of a window of independent levels.
 *
 * @param levelSdM - standard error of a level [m], 0 or more
 * @param cellM - side of a cell [m], above 0
 * @returns variance of the gradient east, and of the one north [m²/m²]
 * @throws RangeError when an argument is out of range
 * @see Florinsky 1998, International Journal of Geographical Information Science 12: 47-62
 */
export function hornVariance(levelSdM: number, cellM: number): number {
  if (!(levelSdM >= 0) || !(cellM > 0))
    throw new RangeError(
      `hornVariance: levelSdM must be 0 or more and cellM above 0, got ${levelSdM} and ${cellM}`,
    )
  return HORN_SQUARES * (levelSdM / cellM) ** 2
}

/**
 * Errors of a grid of levels, each cell's taken to be independent of the others.
 *
 * @param surface - the ground as cells
 * @param terrain - its slopes
 * @param ground - the grid it was made of
 * @param errors - how well its levels were measured
 * @returns standard errors of level [m] and slope [°] in every cell
 */
export function gridErrors(
  surface: Surface,
  terrain: Pick<Terrain, 'slopeDeg' | 'aspectDeg'>,
  ground: GridSurvey,
  errors: MeasuringErrors,
): CellErrors {
  const { cellM } = surface.frame
  const averaged = Math.max(1, Math.round(cellM / ground.cellM))
  const levelSdM = new Float32Array(surface.share.length)
  const slopeSdDeg = new Float32Array(surface.share.length)
  for (let cell = 0; cell < levelSdM.length; cell++) {
    if (!surface.share[cell]) continue
    const gradient = degToGradient(terrain.slopeDeg[cell] ?? 0)
    const hereM = Math.hypot(errors.levelSdM, errors.planSdM * gradient) / averaged
    levelSdM[cell] = hereM
    const variance = hornVariance(hereM, cellM) + errors.levelSdPerM ** 2
    const downhill = toRadians(terrain.aspectDeg[cell] ?? 0)
    slopeSdDeg[cell] = slopeErrorDeg(-gradient * Math.sin(downhill), -gradient * Math.cos(downhill), {
      eastEast: variance,
      eastNorth: 0,
      northNorth: variance,
    })
  }
  return { levelSdM, slopeSdDeg, roughness: undefined }
}
