import { boxAround, cellOutline, cellShares, ringAreaM2, type GridFrame, type Ring } from '#core/geometry'
import type { Outcome, Problem } from '#core/units'
import { shapeProblem, unsurveyedProblem } from './boundary-problems'
import { MOST_CELLS } from './cell-size'
import { coarser, cropped, type LevelGrid } from './level-grid'
import type { GridSurvey } from './survey.schema'

/** Least share of a drawn plot that must hold levels [m²/m²]; own judgement. */
const LEAST_SURVEYED = 0.5

/** How far a wished cell size may miss a whole multiple of the grid's own [cells]. */
const MULTIPLE_SLACK = 1e-6

/** A grid of levels cut to the plot. */
export interface PlotGrid {
  readonly frame: GridFrame
  readonly levelM: Float64Array
  readonly share: Float64Array
  readonly boundary: Ring
}

/**
 * The ground of a grid survey: its own cells, cut to the boundary and made coarser only when too many or wished.
 *
 * @param survey - the grid
 * @param boundary - outline of the plot [m]; the outline of the largest part with levels when undefined
 * @param wishedM - side of a cell the person asks for [m], a whole multiple of the grid's own
 * @returns the grid of the plot, or every problem
 */
export function gridGround(
  survey: GridSurvey,
  boundary: Ring | undefined,
  wishedM: number | undefined,
): Outcome<PlotGrid> {
  const problems = [countProblem(survey), boundary && shapeProblem(boundary)].filter(
    (problem) => problem !== undefined,
  )
  if (problems.length > 0) return { ok: false, problems }
  const own = boundary ? cropped(survey, boxAround(boundary)) : cropped(survey, undefined)
  if (!own) return { ok: false, problems: [boundary ? unsurveyedProblem(0) : emptyProblem()] }
  const factor = chooseFactor(own, wishedM)
  if (!factor.ok) return factor
  return cutToPlot(coarser(own, factor.value), boundary)
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

function cutToPlot(grid: LevelGrid, drawn: Ring | undefined): Outcome<PlotGrid> {
  const { frame, levelM, known } = grid
  const boundary = drawn ?? cellOutline(frame, known)
  if (!boundary) return { ok: false, problems: [emptyProblem()] }
  const share = cellShares(boundary, frame).map((part, cell) => (known[cell] ? part : 0))
  const surveyedM2 = share.reduce((sum, part) => sum + part, 0) * frame.cellM ** 2
  const surveyed = surveyedM2 / ringAreaM2(boundary)
  if (drawn && surveyed < LEAST_SURVEYED) return { ok: false, problems: [unsurveyedProblem(surveyed)] }
  return { ok: true, value: { frame, levelM, share, boundary } }
}
