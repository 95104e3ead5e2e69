import type { DrainedGround } from './slope-position'

/**
 * Height of every cell above the places where its water leaves the plot, each by the share of water it takes.
 *
 * @param ground - levels, ways of water and boundary levels
 * @returns height [m], 0 or more
 */
export function heightAboveFootM(ground: DrainedGround): Float64Array {
  const { filledM, flow } = ground
  const { order } = flow
  const footM = new Float64Array(filledM.length)
  const heightM = new Float64Array(filledM.length)
  for (let at = order.length - 1; at >= 0; at--) {
    const cell = order[at]!
    const meanM = footBelowM(cell, ground, footM)
    footM[cell] = meanM
    // A cell cut by the boundary may have its centre just below the foot.
    heightM[cell] = Math.max(0, filledM[cell]! - meanM)
  }
  return heightM
}

function footBelowM(cell: number, { filledM, flow, edge }: DrainedGround, footM: Float64Array): number {
  const { starts, to, share } = flow
  const end = starts[cell + 1]!
  let link = starts[cell]!
  if (link === end) return edge.leaves[cell] ? edge.footM[cell]! : filledM[cell]!
  let meanM = 0
  for (; link < end; link++) meanM += share[link]! * footM[to[link]!]!
  return meanM
}
