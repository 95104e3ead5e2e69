import type { GroundSurvey, Surface } from '#core/survey'
import type { Terrain } from '#core/terrain'
import type { Accuracy } from './accuracy.types'
import type { CellErrors } from './cell-errors.types'
import { gridErrors } from './grid-errors'
import type { MeasuringErrors } from './measuring-errors'
import { stripErrors } from './strip-errors'
import { triangleErrors } from './triangle-errors'

/**
 * How good a surface is: the standard errors of level and slope in every cell, from how well the points were measured and
 * from how rough the ground between them shows itself to be.
 *
 * @param surface - the ground as cells
 * @param terrain - its slopes
 * @param ground - what it was made of
 * @param errors - how well the points were measured
 * @returns standard errors of every cell, and what they were reckoned from
 */
export function accuracyOf(
  surface: Surface,
  terrain: Pick<Terrain, 'slopeDeg' | 'aspectDeg'>,
  ground: GroundSurvey,
  errors: MeasuringErrors,
): Accuracy {
  const { levelSdM, slopeSdDeg, roughness } = cellErrors(surface, terrain, ground, errors)
  return {
    levelSdM,
    slopeSdDeg,
    from: {
      levelSdM: errors.levelSdM,
      planSdM: errors.planSdM,
      // Of two places 1 m apart the mean square difference is twice the variogram.
      roughnessM: roughness === undefined ? undefined : Math.sqrt(2 * roughness),
      methodId: errors.methodId,
      assumed: errors.assumed,
    },
  }
}

function cellErrors(
  surface: Surface,
  terrain: Pick<Terrain, 'slopeDeg' | 'aspectDeg'>,
  ground: GroundSurvey,
  errors: MeasuringErrors,
): CellErrors {
  if (ground.kind === 'grid') return gridErrors(surface, terrain, ground, errors)
  if (ground.kind === 'levels') return triangleErrors(surface, ground, errors)
  return stripErrors(surface, ground, errors)
}
