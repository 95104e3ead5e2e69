import { eightWays } from './neighbours'
import { weighWays, type FlowGround } from './weigh-ways'

/**
 * What passes through every cell when each hands all it has to its lower neighbours, more to the steeper.
 *
 * Cells are taken in an order in which each has all it gets before it hands it on; no link is stored.
 *
 * @param own - what each cell has of its own [any unit]
 * @param ground - where water can go
 * @returns what passes through each cell, its own included [same unit]; 0 outside the plot
 * @see Freeman 1991, Computers & Geosciences 17: 413-422
 */
export function spreadFlow(own: Float64Array, ground: FlowGround): Float64Array {
  const { offsets } = ground.hood
  const passing = own.slice()
  const weights = new Float64Array(eightWays.length)
  const order = ground.order()
  for (let at = 0; at < order.length; at++) {
    const cell = order[at]!
    const total = weighWays(weights, ground, cell)
    if (total <= 0) continue
    const handed = passing[cell]! / total
    for (let way = 0; way < 8; way++)
      if (weights[way]! > 0) passing[cell + offsets[way]!]! += handed * weights[way]!
  }
  return passing
}
