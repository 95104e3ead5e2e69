import { cellCentre, frameAround } from '#core/geometry'
import type { Outcome } from '#core/units'
import { boundaryProblems } from './boundary-problems'
import { chooseCellM } from './cell-size'
import { facesDegOf } from './facing'
import { gridGround } from './grid-ground'
import { levelsGround } from './levels-ground'
import { plotOutline } from './plot-outline'
import { plotShares } from './plot-shares'
import { bankGround, profileGround } from './profile-ground'
import type { GridSurvey, GroundSurvey } from './survey.schema'
import { readableNotes } from './surface-notes'
import type { SurfaceOptions } from './surface-options.types'
import type { Surface } from './surface.types'
import type { LaidGrid, SurveyedGround } from './surveyed-ground.types'
import { triangleLevelsM } from './triangle-levels'
import { stepAtWalls } from './wall-cells'

/**
 * The ground as a grid of cells, from any of the four kinds of survey.
 *
 * @param ground - what was measured
 * @param options - boundary, holes and cell size, when the person gives them
 * @returns the surface, or every problem that keeps us from it
 */
export function surfaceFrom(ground: GroundSurvey, options: SurfaceOptions = {}): Outcome<Surface> {
  if (ground.kind === 'grid') return surfaceOfGrid(ground, options)
  const surveyed = surveyedGround(ground)
  if (!surveyed.ok) return surveyed
  const grid = laidGrid(surveyed.value, options)
  if (!grid.ok) return grid
  const levelM = levelsM(surveyed.value, grid.value)
  return { ok: true, value: surfaceOf(grid.value, levelM, surveyed.value) }
}

function surveyedGround(ground: Exclude<GroundSurvey, GridSurvey>): Outcome<SurveyedGround> {
  if (ground.kind === 'bank') return bankGround(ground)
  return ground.kind === 'profile' ? profileGround(ground) : levelsGround(ground)
}

function laidGrid(surveyed: SurveyedGround, options: SurfaceOptions): Outcome<LaidGrid> {
  const { outline, hull, gaps, spacingM } = surveyed
  const holes = options.boundary ? options.holes : (options.holes ?? gaps)
  const plot = plotOutline({ ...options, holes }, outline, (drawn) => boundaryProblems(drawn, hull))
  if (!plot.ok) return plot
  const { boundary } = plot.value
  const cellM = chooseCellM(boundary, spacingM, options.cellM)
  if (!cellM.ok) return cellM
  const frame = frameAround(boundary, cellM.value)
  return { ok: true, value: { ...plot.value, frame, share: plotShares(boundary, plot.value.holes, frame) } }
}

function levelsM(surveyed: SurveyedGround, grid: LaidGrid): Float64Array {
  const { levelAt } = surveyed
  if (levelAt) return grid.share.map((part, cell) => (part > 0 ? levelAt(cellCentre(grid.frame, cell)) : 0))
  const levelM = triangleLevelsM(surveyed.tin, grid, surveyed)
  stepAtWalls(levelM, grid.frame, surveyed.walls)
  return levelM
}

function surfaceOfGrid(ground: GridSurvey, options: SurfaceOptions): Outcome<Surface> {
  const plot = gridGround(ground, options)
  if (!plot.ok) return plot
  const { levelM, share } = plot.value
  let [highestM, lowestM] = [-Infinity, Infinity]
  for (let cell = 0; cell < share.length; cell++) {
    if (!share[cell]) continue
    highestM = Math.max(highestM, levelM[cell]!)
    lowestM = Math.min(lowestM, levelM[cell]!)
  }
  return { ok: true, value: surfaceOf(plot.value, levelM, { highestM, lowestM, tin: undefined, notes: [] }) }
}

function surfaceOf(
  grid: LaidGrid,
  levelM: Float64Array,
  measured: Pick<Surface, 'highestM' | 'lowestM' | 'tin' | 'notes'>,
): Surface {
  return {
    frame: grid.frame,
    levelM,
    share: grid.share,
    boundary: grid.boundary,
    holes: grid.holes,
    notes: readableNotes([...grid.notes, ...measured.notes]),
    tin: measured.tin,
    highestM: measured.highestM,
    lowestM: measured.lowestM,
    fallM: measured.highestM - measured.lowestM,
    facesDeg: facesDegOf(grid.frame, levelM, grid.share),
  }
}
