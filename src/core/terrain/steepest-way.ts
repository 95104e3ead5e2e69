import { eightWays, wayLengths } from './neighbours'
import type { FlowGround } from './weigh-ways'

/** Direction code of a cell whose water leaves the plot. */
export const LEAVES = -1

/**
 * The one neighbour that takes all of a cell's water: the one to which the ground falls most steeply, the first
 * clockwise from north of several.
 *
 * On a level stretch it is the neighbour by which the way to the outlet shortens most.
 *
 * @param ground - where water can go
 * @returns for each cell the index of that neighbour in `eightWays`; -1 where water leaves, and outside the plot
 * @see O'Callaghan and Mark 1984, Computer Vision, Graphics, and Image Processing 28: 323-344
 */
export function steepestWays(ground: FlowGround): Int8Array {
  const { hood, leaves } = ground
  const ways = new Int8Array(hood.inside.length).fill(LEAVES)
  for (let cell = 0; cell < ways.length; cell++)
    if (hood.inside[cell] && !leaves[cell]) ways[cell] = steepestWay(ground, cell)
  return ways
}

/**
 * The steepest way down from one cell.
 *
 * @param ground - where water can go
 * @param cell - index of the cell [count]
 * @returns index of the neighbour in `eightWays` [count]; -1 where none lies lower
 */
export function steepestWay(ground: FlowGround, cell: number): number {
  const { hood, filled } = ground
  const { filledM, wayOut } = filled
  const heights = wayOut[cell]! > 0 ? wayOut : filledM
  const hereM = filledM[cell]!
  const here = heights[cell]!
  const bits = hood.around[cell]!
  let [steepest, most] = [LEAVES, 0]
  for (let way = 0; way < eightWays.length; way++) {
    const other = cell + hood.offsets[way]!
    if (!(bits & (1 << way)) || filledM[other]! > hereM) continue
    const fall = (here - heights[other]!) / wayLengths[way]!
    if (fall > most) [steepest, most] = [way, fall]
  }
  return steepest
}

/**
 * What passes through every cell when each hands all it has to one neighbour.
 *
 * @param own - what each cell has of its own [any unit]
 * @param ways - the neighbour that takes it, -1 for none, from `steepestWays`
 * @param ground - where water can go
 * @returns what passes through each cell, its own included [same unit]; 0 outside the plot
 */
export function handOn(own: Float64Array, ways: Int8Array, ground: FlowGround): Float64Array {
  const { offsets } = ground.hood
  const order = ground.filled.risingOrder
  const passing = own.slice()
  for (let at = order.length - 1; at >= 0; at--) {
    const cell = order[at]!
    const way = ways[cell]!
    if (way !== LEAVES) passing[cell + offsets[way]!]! += passing[cell]!
  }
  return passing
}
