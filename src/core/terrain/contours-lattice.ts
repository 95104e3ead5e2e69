import type { Surface } from '#core/survey'
import { eightWays } from './neighbours'
import { riseOfCell } from './place-on-ground'
import type { Terrain } from './terrain.types'

/** Levels of cell centres, with a row and a column more on every side. */
export interface CentreLattice {
  readonly columns: number
  readonly rows: number
  readonly cellM: number
  /** Where its first, north-westernmost centre lies [m]. */
  readonly firstEastM: number
  readonly firstNorthM: number
  /** Level of each centre [m]; not a number where the ground is not known. */
  readonly levelM: Float64Array
}

/**
 * Levels at cell centres, carried one cell over the edge of the plot on the slope of the cells there, so that lines
 * between centres reach the boundary.
 *
 * @param surface - the ground
 * @param terrain - its facts
 * @returns the levels [m]
 */
export function centreLattice(surface: Surface, terrain: Terrain): CentreLattice {
  const { frame, share } = surface
  const [columns, rows] = [frame.columns + 2, frame.rows + 2]
  const levelM = new Float64Array(columns * rows).fill(Number.NaN)
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++) {
      const cell = cellOf(surface, column - 1, row - 1)
      levelM[row * columns + column] =
        cell !== undefined && share[cell]! > 0
          ? surface.levelM[cell]!
          : carriedLevelM(surface, terrain, column - 1, row - 1)
    }
  return {
    columns,
    rows,
    cellM: frame.cellM,
    firstEastM: frame.westM - frame.cellM / 2,
    firstNorthM: frame.southM + (frame.rows + 0.5) * frame.cellM,
    levelM,
  }
}

function cellOf({ frame }: Surface, column: number, row: number): number | undefined {
  const onGrid = column >= 0 && row >= 0 && column < frame.columns && row < frame.rows
  return onGrid ? row * frame.columns + column : undefined
}

// The mean of what the slopes of the cells beside it say; not a number with none beside it.
function carriedLevelM(surface: Surface, terrain: Terrain, column: number, row: number): number {
  let [sum, count] = [0, 0]
  for (const { east, north } of eightWays) {
    const cell = cellOf(surface, column + east, row - north)
    if (cell === undefined || !(surface.share[cell]! > 0)) continue
    const rise = riseOfCell(terrain, cell)
    sum += surface.levelM[cell]! - surface.frame.cellM * (east * rise.east + north * rise.north)
    count++
  }
  return sum / count
}
