import type { GridFrame } from '#core/geometry'
import type { ShadingGround } from './shade.types'

/** Ground made ready for sweeping: heights in both orders, so that every line lies together in memory. */
export interface SweptGround {
  readonly frame: GridFrame
  /** Levels row after row [m]; NaN off the plot, and one more row of NaN at the end. */
  readonly byRow: Float64Array
  /** The same column after column. */
  readonly byColumn: Float64Array
}

/** Cells of a square that is turned over at once [cells]: two of them fit in the fastest memory. */
const BLOCK = 32

/**
 * Makes ground ready for sweeping.
 *
 * @param ground - the grid; cells outside the plot are no ground at all
 * @returns its levels in both orders [m]
 */
export function sweptGround(ground: ShadingGround): SweptGround {
  const { frame, levelM, share } = ground
  const { columns, rows } = frame
  const byRow = new Float64Array(columns * (rows + 1)).fill(NaN)
  const byColumn = new Float64Array(rows * (columns + 1)).fill(NaN)
  for (let cell = 0; cell < levelM.length; cell += 1) if (share[cell]! > 0) byRow[cell] = levelM[cell]!
  for (let north = 0; north < rows; north += BLOCK)
    for (let west = 0; west < columns; west += BLOCK)
      for (let row = north; row < Math.min(rows, north + BLOCK); row += 1)
        for (let column = west; column < Math.min(columns, west + BLOCK); column += 1)
          byColumn[column * rows + row] = byRow[row * columns + column]!
  return { frame, byRow, byColumn }
}
