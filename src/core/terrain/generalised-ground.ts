import type { Surface } from '#core/survey'
import { meanAround } from './mean-around'
import type { Neighbourhood } from './neighbours'
import { plotPlane, type PlotPlane } from './plot-plane'

/** Width at which wetness indices agreed best with measured soil moisture [m]; Larson and others 2022. */
const BEST_WIDTH_M = 16

/** Widths that must fit into the side of a square as large as the plot [count]; own judgement. */
const WIDTHS_TO_PLOT = 10

/** Most cells across a window, for the sake of time [cells]. */
const MOST_CELLS = 64

/**
 * Width to which a plot is generalised before its wetness is worked out: 16 m, but never more than a tenth of the
 * plot's own width, and never less than a cell.
 *
 * @param surface - the ground
 * @returns width [m]
 * @see Larson, Lidberg, Ågren and Laudon 2022, Hydrology and Earth System Sciences 26: 4837-4851
 */
export function generalisedWidthM(surface: Surface): number {
  const { cellM } = surface.frame
  let cells = 0
  for (const share of surface.share) cells += share
  const plotM = Math.sqrt(cells) * cellM
  return Math.max(cellM, Math.min(BEST_WIDTH_M, plotM / WIDTHS_TO_PLOT, MOST_CELLS * cellM))
}

/**
 * The ground with all that is narrower than a width smoothed away: the mean over a round window of that width. The
 * plane nearest to the plot is taken off before and put back after, so that an even slope stays what it is up to the
 * boundary.
 *
 * @param surface - the ground
 * @param hood - cells of the plot
 * @param widthM - width of the window [m], more than 0
 * @returns the same cells with generalised levels
 */
export function generalisedGround(surface: Surface, hood: Neighbourhood, widthM: number): Surface {
  const plane = plotPlane(surface.levelM, hood)
  const radiusCells = widthM / 2 / surface.frame.cellM
  const rest = withPlane(surface.levelM, hood, plane, -1)
  return { ...surface, levelM: withPlane(meanAround(rest, hood, radiusCells), hood, plane, 1) }
}

// The levels with the plane put on (1) or taken off (-1); 0 outside the plot.
function withPlane(levelM: Float64Array, hood: Neighbourhood, plane: PlotPlane, sign: 1 | -1): Float64Array {
  const { columns, rows, inside } = hood
  const changed = new Float64Array(levelM.length)
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++) {
      const cell = row * columns + column
      const planeM = plane.cornerM + column * plane.perColumnM + row * plane.perRowM
      if (inside[cell]) changed[cell] = levelM[cell]! + sign * planeM
    }
  return changed
}
