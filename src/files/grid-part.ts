import type { SurveyPart } from './survey-read.types'

/** A grid as its file gives it, in the file's own unit. */
export interface FileGrid {
  readonly columns: number
  readonly rows: number
  readonly cellEast: number
  readonly cellNorth: number
  /** West and south edge, not centres. */
  readonly west: number
  readonly south: number
  /** Row 0 northernmost; null where there is no ground. */
  readonly levels: (number | null)[]
}

/**
 * A grid as a part of a survey file.
 *
 * @param id - used once in its file
 * @param name - as the file says it
 * @param grid - in the file's own unit
 * @returns the part
 */
export function gridPart(id: string, name: string, grid: FileGrid): SurveyPart {
  const { columns, rows, cellEast, cellNorth, west, south, levels } = grid
  return {
    id,
    name,
    kind: 'grid',
    points: [],
    faces: [],
    breaklines: [],
    boundary: undefined,
    grid: { kind: 'grid', columns, rows, cellM: cellEast, westM: west, southM: south, levelsM: levels },
    ...(cellNorth === cellEast ? {} : { cellNorth }),
  }
}

/**
 * A grid with its northernmost row first, whichever way its file ran.
 *
 * @param grid - `cellNorth` below 0 when row 0 is the southernmost; `south` is then its north edge
 * @returns the grid, row 0 northernmost
 */
export function northFirst(grid: FileGrid): FileGrid {
  const { columns, rows, cellNorth, south, levels } = grid
  if (cellNorth > 0) return grid
  const turned = Array.from({ length: rows }, (_, row) =>
    levels.slice((rows - 1 - row) * columns, (rows - row) * columns),
  )
  return { ...grid, cellNorth: -cellNorth, south: south + rows * cellNorth, levels: turned.flat() }
}
