import type { FlowShares } from './terrain.types'

/**
 * Plan area that drains through every cell, its own included.
 *
 * @param ownM2 - plan area of each cell inside the plot [m²]
 * @param flow - where water goes
 * @returns area upslope of and in each cell [m²]
 */
export function upslopeAreaM2(ownM2: Float64Array, flow: FlowShares): Float64Array {
  const areaM2 = ownM2.slice()
  const { order } = flow
  for (let at = 0; at < order.length; at++) {
    const cell = order[at]!
    const handedM2 = areaM2[cell]!
    const end = flow.starts[cell + 1]!
    for (let link = flow.starts[cell]!; link < end; link++)
      areaM2[flow.to[link]!]! += handedM2 * flow.share[link]!
  }
  return areaM2
}
