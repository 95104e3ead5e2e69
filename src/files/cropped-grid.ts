import type { FileGrid } from './grid-part'
import type { SurveyWindow } from './survey-read.types'

/** Fewest levels that make ground. */
const FEWEST_LEVELS = 3

/**
 * The part of a grid inside a window, without outer rows and columns that hold no ground.
 *
 * @param grid - in the file's own coordinates, row 0 northernmost
 * @param window - what to keep; all when undefined
 * @returns the grid, undefined when too little is left, and what was done
 */
export function croppedGrid(
  grid: FileGrid,
  window: SurveyWindow | undefined,
): { grid: FileGrid | undefined; notes: string[] } {
  const span = filledSpan(grid, window ? spanOf(grid, window) : wholeSpan(grid))
  const { first, last, top, bottom } = span
  const columns = last - first + 1
  const rows = bottom - top + 1
  if (!(columns >= 2 && rows >= 2)) return { grid: undefined, notes: [] }
  const levels: (number | null)[] = []
  for (let row = top; row <= bottom; row++)
    for (let column = first; column <= last; column++)
      levels.push(grid.levels[row * grid.columns + column] ?? null)
  if (levels.filter((level) => level !== null).length < FEWEST_LEVELS) return { grid: undefined, notes: [] }
  const same = columns === grid.columns && rows === grid.rows
  const cropped = {
    ...grid,
    columns,
    rows,
    west: grid.west + first * grid.cellEast,
    south: grid.south + (grid.rows - 1 - bottom) * grid.cellNorth,
    levels,
  }
  return same
    ? { grid, notes: [] }
    : { grid: cropped, notes: [`${columns} × ${rows} of ${grid.columns} × ${grid.rows} cells are kept.`] }
}

/** Rows and columns, both ends included. */
interface Span {
  readonly first: number
  readonly last: number
  readonly top: number
  readonly bottom: number
}

const wholeSpan = ({ columns, rows }: FileGrid): Span => ({
  first: 0,
  last: columns - 1,
  top: 0,
  bottom: rows - 1,
})

/** Cells whose middle lies in the window. */
function spanOf(grid: FileGrid, { west, south, east, north }: SurveyWindow): Span {
  const { columns, rows, cellEast, cellNorth } = grid
  const column = (at: number) => (at - grid.west) / cellEast - 0.5
  const row = (at: number) => rows - (at - grid.south) / cellNorth - 0.5
  return {
    first: Math.max(0, Math.ceil(column(west))),
    last: Math.min(columns - 1, Math.floor(column(east))),
    top: Math.max(0, Math.ceil(row(north))),
    bottom: Math.min(rows - 1, Math.floor(row(south))),
  }
}

function filledSpan({ columns, levels }: FileGrid, span: Span): Span {
  let [first, last, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity]
  for (let row = span.top; row <= span.bottom; row++)
    for (let column = span.first; column <= span.last; column++) {
      if ((levels[row * columns + column] ?? null) === null) continue
      first = Math.min(first, column)
      last = Math.max(last, column)
      top = Math.min(top, row)
      bottom = Math.max(bottom, row)
    }
  return { first, last, top, bottom }
}
