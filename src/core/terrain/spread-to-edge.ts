import { eightWays, type Neighbourhood } from './neighbours'

/**
 * Gives cells without a value the mean of their neighbours', ring by ring towards the boundary.
 *
 * @param fields - values of each cell [any unit], changed in place
 * @param known - 1 for each cell with a value [count], changed in place
 * @param hood - cells of the plot and their neighbours
 */
export function spreadToEdge(fields: readonly Float64Array[], known: Uint8Array, hood: Neighbourhood): void {
  let waiting: number[] = []
  for (let cell = 0; cell < known.length; cell++) if (hood.inside[cell] && !known[cell]) waiting.push(cell)
  for (;;) {
    const reached = waiting.filter((cell) => takeMean(cell, fields, known, hood))
    if (reached.length === 0) return
    for (const cell of reached) known[cell] = 1
    waiting = waiting.filter((cell) => !known[cell])
  }
}

// False when no neighbour has a value yet.
function takeMean(
  cell: number,
  fields: readonly Float64Array[],
  known: Uint8Array,
  hood: Neighbourhood,
): boolean {
  const { around, offsets } = hood
  const bits = around[cell]!
  let [givers, count] = [0, 0]
  for (let way = 0; way < eightWays.length; way++)
    if (bits & (1 << way) && known[cell + offsets[way]!]) {
      givers |= 1 << way
      count += 1
    }
  if (count === 0) return false
  for (const field of fields) {
    let sum = 0
    for (let way = 0; way < eightWays.length; way++)
      if (givers & (1 << way)) sum += field[cell + offsets[way]!]!
    field[cell] = sum / count
  }
  return true
}
