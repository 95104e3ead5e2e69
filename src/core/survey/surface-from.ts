import { cellCentre, cellShares, frameAround, type Ring } from '#core/geometry'
import type { Outcome } from '#core/units'
import { boundaryProblems } from './boundary-problems'
import { chooseCellM } from './cell-size'
import { facesDegOf } from './facing'
import { gridGround } from './grid-ground'
import { levelsGround } from './levels-ground'
import { bankGround, profileGround } from './profile-ground'
import type { GridSurvey, GroundSurvey } from './survey.schema'
import type { Surface } from './surface.types'
import type { LaidGrid, SurveyedGround } from './surveyed-ground.types'
import { triangleLevelsM } from './triangle-levels'

/** What the person may add to a survey. */
export interface SurfaceOptions {
  /** Outline of the plot [m]; the survey's own extent when left out. */
  readonly boundary?: Ring | undefined
  /** Side of a grid cell [m]; chosen from the plot when left out. */
  readonly cellM?: number | undefined
}

/**
 * The ground as a grid of cells, from any of the four kinds of survey.
 *
 * @param ground - what was measured
 * @param options - boundary and cell size, when the person gives them
 * @returns the surface, or every problem that keeps us from it
 */
export function surfaceFrom(ground: GroundSurvey, options: SurfaceOptions = {}): Outcome<Surface> {
  if (ground.kind === 'grid') return surfaceOfGrid(ground, options)
  const surveyed = surveyedGround(ground)
  if (!surveyed.ok) return surveyed
  const boundary = options.boundary ?? surveyed.value.outline
  const problems = options.boundary ? boundaryProblems(boundary, surveyed.value.outline) : []
  if (problems.length > 0) return { ok: false, problems }
  const cellM = chooseCellM(boundary, surveyed.value.spacingM, options.cellM)
  if (!cellM.ok) return cellM
  const frame = frameAround(boundary, cellM.value)
  const grid = { frame, share: cellShares(boundary, frame), boundary }
  return { ok: true, value: surfaceOf(grid, levelsM(surveyed.value, grid), surveyed.value) }
}

function surveyedGround(ground: Exclude<GroundSurvey, GridSurvey>): Outcome<SurveyedGround> {
  if (ground.kind === 'bank') return bankGround(ground)
  return ground.kind === 'profile' ? profileGround(ground) : levelsGround(ground)
}

function levelsM(surveyed: SurveyedGround, grid: LaidGrid): Float64Array {
  const { levelAt } = surveyed
  if (!levelAt) return triangleLevelsM(surveyed.tin, grid, surveyed)
  return grid.share.map((part, cell) => (part > 0 ? levelAt(cellCentre(grid.frame, cell)) : 0))
}

function surfaceOfGrid(ground: GridSurvey, options: SurfaceOptions): Outcome<Surface> {
  const plot = gridGround(ground, options.boundary, options.cellM)
  if (!plot.ok) return plot
  const { levelM, share } = plot.value
  let [highestM, lowestM] = [-Infinity, Infinity]
  for (let cell = 0; cell < share.length; cell++) {
    if (!share[cell]) continue
    highestM = Math.max(highestM, levelM[cell] ?? 0)
    lowestM = Math.min(lowestM, levelM[cell] ?? 0)
  }
  return { ok: true, value: surfaceOf(plot.value, levelM, { highestM, lowestM, tin: undefined }) }
}

function surfaceOf(
  grid: LaidGrid,
  levelM: Float64Array,
  measured: Pick<Surface, 'highestM' | 'lowestM' | 'tin'>,
): Surface {
  return {
    frame: grid.frame,
    levelM,
    share: grid.share,
    boundary: grid.boundary,
    holes: [],
    notes: [],
    tin: measured.tin,
    highestM: measured.highestM,
    lowestM: measured.lowestM,
    fallM: measured.highestM - measured.lowestM,
    facesDeg: facesDegOf(grid.frame, levelM, grid.share),
  }
}
