/**
 * Cells from the lowest value up; of equal values the one listed first.
 *
 * @param cells - cells to be ordered
 * @param values - a finite value of each cell of the frame [any unit]
 * @returns the same cells in rising order
 */
export function risingCells(cells: readonly number[], values: ArrayLike<number>): Uint32Array {
  const sorted = new Float64Array(cells.length)
  for (let at = 0; at < cells.length; at++) sorted[at] = values[cells[at]!]!
  sorted.sort()
  const rising = new Uint32Array(cells.length)
  // How many cells of the value that begins at a place have been put down.
  const put = new Uint32Array(cells.length)
  for (let at = 0; at < cells.length; at++) {
    const cell = cells[at]!
    const start = firstPlace(sorted, values[cell]!)
    const count = put[start]!
    rising[start + count] = cell
    put[start] = count + 1
  }
  return rising
}

// Where a value first stands among sorted ones, by halving.
function firstPlace(sorted: Float64Array, value: number): number {
  let low = 0
  let high = sorted.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (sorted[middle]! < value) low = middle + 1
    else high = middle
  }
  return low
}
