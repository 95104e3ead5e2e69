import { boxAround, cellOutline, ringAreaM2, sharedAreaM2, type GridFrame, type Ring } from '#core/geometry'
import type { Outcome, Problem } from '#core/units'
import { LEAST_SURVEYED, shapeProblem, unsurveyedProblem } from './boundary-problems'
import { MOST_CELLS } from './cell-size'
import { islandNotes } from './island-notes'
import { coarser, cropped, type LevelGrid } from './level-grid'
import { drawnBoundary, plotOutline } from './plot-outline'
import { plotShares } from './plot-shares'
import type { SurfaceNote } from './surface.types'
import type { SurfaceOptions } from './surface-options.types'
import type { GridSurvey } from './survey.schema'
import type { LaidGrid } from './surveyed-ground.types'

/** How far a wished cell size may miss a whole multiple of the grid's own [cells]. */
const MULTIPLE_SLACK = 1e-6

/** A grid of levels cut to the plot. */
export interface PlotGrid extends LaidGrid {
  readonly levelM: Float64Array
}

/**
 * The ground of a grid survey: its own cells, cut to the boundary and made coarser only when too many or wished.
 *
 * @param survey - the grid
 * @param options - boundary, holes and cell size, when the person gives them; the outline of the largest part with levels is
 * the plot when there is no boundary
 * @returns the grid of the plot, or every problem
 */
export function gridGround(survey: GridSurvey, options: SurfaceOptions): Outcome<PlotGrid> {
  const drawn = drawnBoundary(options)
  const problems = [countProblem(survey), drawn && shapeProblem(drawn)].filter(
    (problem) => problem !== undefined,
  )
  if (problems.length > 0) return { ok: false, problems }
  const own = cropped(survey, drawn && boxAround(drawn.ring))
  if (!own) return { ok: false, problems: [drawn ? unsurveyedProblem(0) : emptyProblem()] }
  const factor = chooseFactor(own, options.cellM)
  if (!factor.ok) return factor
  const plot = cutToPlot(coarser(own, factor.value), options)
  const joined = options.cellM === undefined && factor.value > 1
  if (!plot.ok || !joined) return plot
  return {
    ok: true,
    value: { ...plot.value, notes: [joinedNote(own.frame, factor.value), ...plot.value.notes] },
  }
}

function countProblem(survey: GridSurvey): Problem | undefined {
  const wanted = survey.columns * survey.rows
  if (survey.levelsM.length === wanted) return undefined
  return {
    where: 'survey.ground.levelsM',
    what: `The grid holds ${survey.levelsM.length} levels; ${survey.columns} columns × ${survey.rows} rows make ${wanted}.`,
    mend: 'Check the number of columns and rows; where no level is known write null.',
  }
}

function emptyProblem(): Problem {
  return {
    where: 'survey.ground.levelsM',
    what: 'The grid holds no level at all.',
    mend: 'Load the file again; its "no data" value may be wrong.',
  }
}

function chooseFactor(own: LevelGrid, wishedM: number | undefined): Outcome<number> {
  const { columns, rows, cellM } = own.frame
  const least = Math.ceil(Math.sqrt((columns * rows) / MOST_CELLS))
  if (wishedM === undefined) return { ok: true, value: least }
  const factor = Math.round(wishedM / cellM)
  const misses = factor < 1 || Math.abs(wishedM / cellM - factor) > MULTIPLE_SLACK
  if (!misses && factor >= least && factor * 2 <= Math.min(columns, rows)) return { ok: true, value: factor }
  return {
    ok: false,
    problems: [
      {
        where: 'survey.cellM',
        what: `Cells of ${wishedM} m do not fit the surveyed grid, whose cells are ${cellM} m.`,
        mend: `Leave the size out, or choose a whole multiple of ${cellM} m, ${least * cellM} m or more, with at least 2 cells each way.`,
      },
    ],
  }
}

function joinedNote({ columns, rows, cellM }: GridFrame, factor: number): SurfaceNote {
  const what = `The grid holds ${columns * rows} cells, more than the ${MOST_CELLS} we reckon with; blocks of ${factor} × ${factor} are joined to cells of ${Number((cellM * factor).toFixed(6))} m.`
  return { kind: 'merged', what, at: undefined }
}

function cutToPlot({ frame, levelM, known }: LevelGrid, options: SurfaceOptions): Outcome<PlotGrid> {
  const outline = cellOutline(frame, known)
  if (!outline) return { ok: false, problems: [options.boundary ? unsurveyedProblem(0) : emptyProblem()] }
  const plot = plotOutline(options, outline, () => [])
  if (!plot.ok) return plot
  const { boundary, holes } = plot.value
  const share = plotShares(boundary, holes, frame)
  let surveyedCells = 0
  for (let cell = 0; cell < share.length; cell++) {
    if (!known[cell]) share[cell] = 0
    surveyedCells += share[cell]!
  }
  const surveyed = surveyedCells / plotCells(boundary, holes, frame)
  if (surveyed === 0 || (options.boundary && surveyed < LEAST_SURVEYED))
    return { ok: false, problems: [unsurveyedProblem(surveyed)] }
  const notes = [...plot.value.notes, ...(options.boundary ? [] : islandNotes(frame, known))]
  return { ok: true, value: { ...plot.value, frame, levelM, share, notes } }
}

// Area of the plot in cells, the part beyond the grid too.
function plotCells(boundary: Ring, holes: readonly Ring[], { cellM }: GridFrame): number {
  const holesM2 = holes.reduce((sum, hole) => sum + sharedAreaM2(hole, boundary), 0)
  return (ringAreaM2(boundary) - holesM2) / cellM ** 2
}
