import type { Neighbourhood } from './neighbours'

/** Below this share of their spread the cells lie in one line [cells²/cells²]. */
const LINE_SHARE = 1e-12

/** A plane over the grid, counted in cells from its north-west corner. */
export interface PlotPlane {
  /** Level in the middle of the first cell [m]. */
  readonly cornerM: number
  /** Rise from column to column [m]. */
  readonly perColumnM: number
  /** Rise from row to row [m]. */
  readonly perRowM: number
}

/**
 * The plane nearest to the cells of a plot (least squares).
 *
 * @param levelM - level of each cell [m]
 * @param hood - cells of the plot
 * @returns the plane; level where the cells lie in one line
 */
export function plotPlane(levelM: Float64Array, hood: Neighbourhood): PlotPlane {
  const middle = middleOf(levelM, hood)
  let [xx, xy, yy, xz, yz] = [0, 0, 0, 0, 0]
  eachCell(hood, (cell, column, row) => {
    const x = column - middle.column
    const y = row - middle.row
    const z = levelM[cell]! - middle.levelM
    xx += x * x
    xy += x * y
    yy += y * y
    xz += x * z
    yz += y * z
  })
  const determinant = xx * yy - xy * xy
  const inLine = !(determinant > LINE_SHARE * (xx + yy) * (xx + yy))
  const perColumnM = inLine ? 0 : (xz * yy - yz * xy) / determinant
  const perRowM = inLine ? 0 : (yz * xx - xz * xy) / determinant
  return {
    cornerM: middle.levelM - perColumnM * middle.column - perRowM * middle.row,
    perColumnM,
    perRowM,
  }
}

function middleOf(levelM: Float64Array, hood: Neighbourhood) {
  let [count, columns, rows, levels] = [0, 0, 0, 0]
  eachCell(hood, (cell, column, row) => {
    count += 1
    columns += column
    rows += row
    levels += levelM[cell]!
  })
  return { column: columns / (count || 1), row: rows / (count || 1), levelM: levels / (count || 1) }
}

function eachCell(
  { columns, rows, inside }: Neighbourhood,
  visit: (cell: number, column: number, row: number) => void,
): void {
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++)
      if (inside[row * columns + column]) visit(row * columns + column, column, row)
}
