import type { DrainedGround } from './slope-position'

/**
 * Height of every cell above the places where its water leaves the plot, each by the share of water it takes.
 *
 * @param ground - levels, ways of water and boundary levels
 * @returns height [m], 0 or more
 */
export function heightAboveFootM(ground: DrainedGround): Float64Array {
  const { filledM, flow } = ground
  const footM = new Float64Array(filledM.length)
  const heightM = new Float64Array(filledM.length)
  for (let at = flow.order.length - 1; at >= 0; at--) {
    const cell = flow.order[at] ?? 0
    const meanM = footBelowM(cell, ground, footM)
    footM[cell] = meanM
    // A cell cut by the boundary may have its centre just below the foot.
    heightM[cell] = Math.max(0, (filledM[cell] ?? 0) - meanM)
  }
  return heightM
}

function footBelowM(cell: number, { filledM, flow, edge }: DrainedGround, footM: Float64Array): number {
  const [start, end] = [flow.starts[cell] ?? 0, flow.starts[cell + 1] ?? 0]
  if (start === end) return (edge.leaves[cell] ? edge.footM[cell] : filledM[cell]) ?? 0
  let meanM = 0
  for (let link = start; link < end; link++)
    meanM += (flow.share[link] ?? 0) * (footM[flow.to[link] ?? 0] ?? 0)
  return meanM
}
