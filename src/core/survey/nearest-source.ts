import type { GridFrame } from '#core/geometry'

/**
 * For every cell the nearest cell of a set, found by two sweeps that hand the nearest on from neighbour to neighbour.
 *
 * @param frame - where the grid lies
 * @param isSource - 1 for each cell of the set [count]
 * @returns index of the nearest cell of the set [count]; -1 everywhere when the set is empty
 * @see Danielsson 1980, Computer Graphics and Image Processing 14: 227-248
 */
export function nearestSource(frame: GridFrame, isSource: Uint8Array): Int32Array {
  const { columns, rows } = frame
  const nearest = Int32Array.from(isSource, (source, cell) => (source ? cell : -1))
  const offer = (cell: number, row: number, column: number) => {
    if (row < 0 || row >= rows || column < 0 || column >= columns) return
    const candidate = nearest[row * columns + column]!
    const held = nearest[cell]!
    if (candidate < 0 || held === candidate) return
    if (held < 0 || squareGap(columns, cell, candidate) < squareGap(columns, cell, held))
      nearest[cell] = candidate
  }
  const sweepRow = (row: number, towards: 1 | -1) => {
    for (let column = 0; column < columns; column++)
      for (let side = -1; side <= 1; side++) offer(row * columns + column, row - towards, column + side)
    for (let column = 0; column < columns; column++) offer(row * columns + column, row, column - 1)
    for (let column = columns - 1; column >= 0; column--) offer(row * columns + column, row, column + 1)
  }
  for (let row = 0; row < rows; row++) sweepRow(row, 1)
  for (let row = rows - 1; row >= 0; row--) sweepRow(row, -1)
  return nearest
}

function squareGap(columns: number, one: number, other: number): number {
  const across = (one % columns) - (other % columns)
  const down = Math.floor(one / columns) - Math.floor(other / columns)
  return across * across + down * down
}
