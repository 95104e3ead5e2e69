import type { FilledGround } from './fill-hollows'
import type { Gradients } from './gradients'
import { eightWays, wayLengths } from './neighbours'
import type { FlowGround } from './weigh-ways'

/** Direction code of a cell whose water leaves the plot. */
export const LEAVES = -1

/** Falls that differ by less than this share of themselves are alike: rounding. */
const TIE = 1e-12

/** What to divide a drop by for the length of the way to each neighbour [1/cells]. */
const perLength = Float64Array.from(wayLengths, (length) => 1 / length)

/**
 * The one neighbour that takes all of a cell's water: the one to which the ground falls most steeply, and of several
 * the one that lies nearest to the direction in which the cell's own slope falls.
 *
 * On a level stretch it is the neighbour that lies nearest to the outlet.
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
  const { hood, filled, slopes } = ground
  const bits = hood.around[cell]!
  const onLevel = filled.wayOut[cell]! > 0
  let steepest = LEAVES
  let most = 0
  for (let way = 0; way < eightWays.length; way++) {
    if (!(bits & (1 << way))) continue
    const other = cell + hood.offsets[way]!
    const fall = onLevel ? nearer(filled, cell, other) : dropM(filled, cell, other) * perLength[way]!
    if (fall <= 0 || fall < most * (1 - TIE)) continue
    const tied = fall <= most * (1 + TIE)
    if (tied && descent(slopes, cell, way) <= descent(slopes, cell, steepest)) continue
    steepest = way
    most = fall
  }
  return steepest
}

function dropM({ filledM }: FilledGround, cell: number, other: number): number {
  return filledM[cell]! - filledM[other]!
}

// How much nearer to the outlet a neighbour on the same level lies [cells].
function nearer({ filledM, wayOut }: FilledGround, cell: number, other: number): number {
  return filledM[other] === filledM[cell] ? wayOut[cell]! - wayOut[other]! : 0
}

// How steeply the cell's own slope falls along a way [m/m].
function descent({ east, north }: Gradients, cell: number, way: number): number {
  const { east: x, north: y } = eightWays[way]!
  return -(east[cell]! * x + north[cell]! * y) * perLength[way]!
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
  const passing = own.slice()
  const order = ground.order()
  for (let at = 0; at < order.length; at++) {
    const cell = order[at]!
    const way = ways[cell]!
    if (way !== LEAVES) passing[cell + offsets[way]!]! += passing[cell]!
  }
  return passing
}
