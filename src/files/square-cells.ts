import type { GridSurvey } from '#core/survey'
import type { Outcome } from '#core/units'
import { MOST_CELLS } from '#io'
import type { FileGrid } from './grid-part'
import type { PlotFrame } from './plot-frame'
import { refusal } from './refusal'
import { rangeOf } from './spread'

/** Places along each edge from which the extent in metres is told. */
const ALONG_EDGE = 16

/** Times as many cells as the file has: long thin ones would otherwise become a great many. */
const MOST_TIMES = 4

/**
 * A grid read anew on square cells in metres, as fine as the shorter side of its own. Levels between cell middles are
 * bilinear; a cell is ground only where all the middles it is read from are.
 *
 * @param grid - in the file's own coordinates, row 0 northernmost
 * @param frame - from these coordinates to the plot's
 * @returns the grid in the plot's frame and what was done; or why its cells make no grid
 */
export function squareCells(
  grid: FileGrid,
  frame: PlotFrame,
): Outcome<{ ground: GridSurvey; notes: string[] }> {
  const extent = extentOf(grid, frame)
  const sides = sidesOf(grid, frame)
  const most = Math.min(MOST_CELLS, MOST_TIMES * grid.columns * grid.rows)
  const cellM = fittingCell(Math.min(sides.eastM, sides.northM), extent, most)
  // Middles of the outer cells stand on the outermost middles of the file.
  const columns = Math.max(2, Math.floor((extent.eastM - extent.westM) / cellM) + 1)
  const rows = Math.max(2, Math.floor((extent.northM - extent.southM) / cellM) + 1)
  if (!(cellM > 0 && columns * rows <= 2 * most))
    return refusal(
      'cells',
      `Cells of ${sides.eastM} m by ${sides.northM} m make no grid of ground.`,
      'Check the size of the cells and the coordinate system that the file names.',
    )
  const levelsM: (number | null)[] = []
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++) {
      const eastM = extent.westM + column * cellM
      const northM = extent.southM + (rows - 1 - row) * cellM
      const level = levelBetween(grid, frame.fromPlot({ eastM, northM }))
      levelsM.push(level === null ? null : level * frame.levelLengthM)
    }
  const [westM, southM] = [extent.westM - cellM / 2, extent.southM - cellM / 2]
  const told = `Its cells of ${sides.eastM.toFixed(2)} m by ${sides.northM.toFixed(2)} m were read anew on square cells of ${cellM} m, levels between them bilinear.`
  return {
    ok: true,
    value: { ground: { kind: 'grid', columns, rows, cellM, westM, southM, levelsM }, notes: [told] },
  }
}

interface Extent {
  readonly westM: number
  readonly eastM: number
  readonly southM: number
  readonly northM: number
}

/** Extent of the outermost cell middles in the plot's frame. */
function extentOf(grid: FileGrid, { toPlot }: PlotFrame): Extent {
  const { west, south, columns, rows, cellEast, cellNorth } = grid
  const shares = Array.from({ length: ALONG_EDGE + 1 }, (_, at) => at / ALONG_EDGE)
  const edge = shares.flatMap((share) => [
    [share, 0] as const,
    [share, 1] as const,
    [0, share] as const,
    [1, share] as const,
  ])
  const places = edge.map(([across, up]) =>
    toPlot(west + (0.5 + across * (columns - 1)) * cellEast, south + (0.5 + up * (rows - 1)) * cellNorth),
  )
  const east = rangeOf(places.map(({ eastM }) => eastM))
  const north = rangeOf(places.map(({ northM }) => northM))
  return { westM: east.lowest, eastM: east.highest, southM: north.lowest, northM: north.highest }
}

/** Sides of a cell in the middle of the grid [m]. */
function sidesOf(grid: FileGrid, { toPlot }: PlotFrame): { eastM: number; northM: number } {
  const east = grid.west + (grid.columns / 2) * grid.cellEast
  const north = grid.south + (grid.rows / 2) * grid.cellNorth
  const middle = toPlot(east, north)
  return {
    eastM: toPlot(east + grid.cellEast, north).eastM - middle.eastM,
    northM: toPlot(east, north + grid.cellNorth).northM - middle.northM,
  }
}

/** Two figures of a side are enough, and there must not be too many cells. */
function fittingCell(sideM: number, { westM, eastM, southM, northM }: Extent, most: number): number {
  const coarse = Math.sqrt(((eastM - westM) * (northM - southM)) / most)
  return Number(Math.max(sideM, coarse * 1.01).toPrecision(3))
}

/** A place this near a middle lies on it [share of a cell]. */
const ON_MIDDLE = 1e-6

/** Level at a place by the four cell middles around it; null where one of them that counts has none. */
function levelBetween(grid: FileGrid, [east, north]: readonly [number, number]): number | null {
  const column = (east - grid.west) / grid.cellEast - 0.5
  const row = grid.rows - (north - grid.south) / grid.cellNorth - 0.5
  const [left, across] = stepOf(column, grid.columns)
  const [top, down] = stepOf(row, grid.rows)
  if (left < 0 || top < 0) return null
  let level = 0
  for (const [below, right] of corners) {
    const weight = (right === 1 ? across : 1 - across) * (below === 1 ? down : 1 - down)
    if (weight <= 0) continue
    const corner = grid.levels[(top + below) * grid.columns + left + right] ?? null
    if (corner === null) return null
    level += weight * corner
  }
  return level
}

const corners = [
  [0, 0],
  [0, 1],
  [1, 0],
  [1, 1],
] as const

/** Whole cells before a place and the share of the next; -1 outside the grid. */
function stepOf(place: number, count: number): readonly [number, number] {
  const near = Math.round(place)
  const settled = Math.abs(place - near) < ON_MIDDLE ? near : place
  if (settled < 0 || settled > count - 1) return [-1, 0]
  const whole = Math.floor(settled)
  return [whole, settled - whole]
}
