import type { GridSurvey } from '#core/survey'
import type { Outcome } from '#core/units'
import { croppedGrid } from './cropped-grid'
import { plotFrameOf, type PlotFrame } from './plot-frame'
import { refusal } from './refusal'
import { squareCells } from './square-cells'
import type { FileGrid } from './grid-part'
import type { SurveyGround, SurveyPart, SurveyRead, SurveyWindow, SurveyWish } from './survey-read.types'

/** Difference of the sides of a cell that is rounding [share of a side]. */
const SQUARE_ENOUGH = 1e-6

/**
 * A grid in metres and in the plot's own frame. Cells that are not square, as those in degrees never are, are read anew
 * on square ones.
 *
 * @param part - the grid
 * @param read - the file
 * @param wish - what the person confirmed
 * @returns the ground, or why it cannot be kept
 */
export function gridGround(part: SurveyPart, read: SurveyRead, wish: SurveyWish): Outcome<SurveyGround> {
  if (!part.grid) throw new RangeError('gridGround: the part must hold a grid, got none')
  const whole = fileGridOf(part.grid, part.cellNorth)
  const { grid, notes } = croppedGrid(dropZeros(whole, wish), wish.window)
  if (!grid)
    return refusal(
      'grid',
      'There are fewer than 3 levels, or fewer than 2 rows or columns, in what was chosen of the grid.',
      'Choose a larger part, or check the no-data value.',
    )
  const frame = plotFrameOf(boxOf(grid), read, wish)
  if (!frame.ok) return frame
  const square =
    frame.value.planLengthM !== undefined &&
    Math.abs(grid.cellNorth - grid.cellEast) <= grid.cellEast * SQUARE_ENOUGH
  const laid = square ? plainGrid(frame.value, grid) : squareCells(grid, frame.value)
  if (!laid.ok) return laid
  const { ground } = laid.value
  const { shift, site } = frame.value
  return {
    ok: true,
    value: {
      ground,
      boundary: undefined,
      shift,
      site,
      notes: [...frame.value.notes, ...notes, ...laid.value.notes],
    },
  }
}

function fileGridOf(grid: GridSurvey, cellNorth = grid.cellM): FileGrid {
  const { columns, rows, cellM, westM, southM, levelsM } = grid
  return { columns, rows, cellEast: cellM, cellNorth, west: westM, south: southM, levels: levelsM }
}

const dropZeros = (grid: FileGrid, { zeroLevels }: SurveyWish): FileGrid =>
  zeroLevels === 'leave-out'
    ? { ...grid, levels: grid.levels.map((level) => (level === 0 ? null : level)) }
    : grid

function boxOf({ west, south, columns, rows, cellEast, cellNorth }: FileGrid): SurveyWindow {
  return { west, south, east: west + columns * cellEast, north: south + rows * cellNorth }
}

function plainGrid(frame: PlotFrame, grid: FileGrid): Outcome<{ ground: GridSurvey; notes: string[] }> {
  return { ok: true, value: { ground: gridIn(frame, grid), notes: [] } }
}

function gridIn({ toPlot, planLengthM = 1, levelLengthM }: PlotFrame, grid: FileGrid): GridSurvey {
  const { eastM, northM } = toPlot(grid.west, grid.south)
  return {
    kind: 'grid',
    columns: grid.columns,
    rows: grid.rows,
    cellM: grid.cellEast * planLengthM,
    westM: eastM,
    southM: northM,
    levelsM: grid.levels.map((level) => (level === null ? null : level * levelLengthM)),
  }
}
