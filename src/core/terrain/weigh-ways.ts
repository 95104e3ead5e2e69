import type { FilledGround } from './fill-hollows'
import type { Gradients } from './gradients'
import { eightWays, wayLengths, type Neighbourhood } from './neighbours'
import { steepened } from './steepened'

/** What says where water can go. */
export interface FlowGround {
  readonly hood: Neighbourhood
  readonly filled: FilledGround
  readonly slopes: Gradients
  /** Each cell after every cell that can drain to it. */
  readonly order: () => Uint32Array
  /** 1 for each cell whose ground falls straight out of the plot: its water leaves there. */
  readonly leaves: Uint8Array
}

/** What a drop's weight is divided by for the length of the way to each neighbour. */
const wayWeights = Float64Array.from(wayLengths, (length) => 1 / steepened(length))

/**
 * How much of a cell's water each of its eight neighbours draws: by (drop / distance)^1.1, lower ones only.
 *
 * On a level stretch, how much nearer to the outlet the neighbour lies stands for the drop. Where the ground falls
 * straight out of the plot, and at the lip of the edge, no neighbour draws any.
 *
 * @param weights - takes the weight of each neighbour, in the order of `eightWays`
 * @param ground - where water can go
 * @param cell - index of the cell [count]
 * @returns sum of the weights [ratio]; 0 where water leaves the plot
 * @see Freeman 1991, Computers & Geosciences 17: 413-422
 */
export function weighWays(weights: Float64Array, ground: FlowGround, cell: number): number {
  const { around, offsets } = ground.hood
  const { filledM, wayOut } = ground.filled
  if (ground.leaves[cell]) return 0
  if (wayOut[cell]! > 0) return weighLevelWays(weights, ground, cell)
  const bits = around[cell]!
  const hereM = filledM[cell]!
  let total = 0
  for (let way = 0; way < 8; way++) {
    let weight = 0
    if (bits & (1 << way)) {
      const dropM = hereM - filledM[cell + offsets[way]!]!
      // Cell sides cancel out between the neighbours of one cell, so the drop per cell stands for the gradient.
      if (dropM > 0) weight = steepened(dropM) * wayWeights[way]!
    }
    weights[way] = weight
    total += weight
  }
  return total
}

function weighLevelWays(weights: Float64Array, { hood, filled }: FlowGround, cell: number): number {
  const { filledM, wayOut } = filled
  const bits = hood.around[cell]!
  let total = 0
  for (let way = 0; way < eightWays.length; way++) {
    const other = cell + hood.offsets[way]!
    const nearer = bits & (1 << way) && filledM[other] === filledM[cell] ? wayOut[cell]! - wayOut[other]! : 0
    const weight = nearer > 0 ? steepened(nearer) * wayWeights[way]! : 0
    weights[way] = weight
    total += weight
  }
  return total
}
