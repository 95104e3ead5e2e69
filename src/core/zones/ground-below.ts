import { risingCells } from './rising-cells'

/**
 * Share of the ground that lies lower on the slope than each cell, 0 to 1: a short steep face spans little of it,
 * however much height it takes.
 *
 * @param position - position of each cell, 0 (foot) to 1 (crest) [ratio]
 * @param share - part of each cell to be counted, 0 to 1 [ratio]
 * @returns the share, one for each cell
 */
export function groundBelow(position: Float64Array, share: Float64Array): Float64Array {
  const cells: number[] = []
  for (let cell = 0; cell < share.length; cell++) if ((share[cell] ?? 0) > 0) cells.push(cell)
  const order = risingCells(cells, position)
  let whole = 0
  for (const cell of order) whole += share[cell] ?? 0
  const below = new Float64Array(position.length)
  let passed = 0
  for (const cell of order) {
    const part = share[cell] ?? 0
    below[cell] = (passed + part / 2) / whole
    passed += part
  }
  return below
}
