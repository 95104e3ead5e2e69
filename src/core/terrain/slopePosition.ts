import type { EdgeFalls } from './edgeFalls'
import type { FlowShares } from './terrain.types'

/** A rise smaller than this share of the plot's own is a bump, not a crest of its own; own judgement [m/m]. */
const LEAST_CREST = 0.1

/** A plot that rises less than this has no foot and no crest [m]. */
const LEVEL_PLOT_M = 1e-6

/** Position on ground without foot and crest. */
const NEITHER = 0.5

/** Where every cell stands between foot and crest. */
export interface SlopePosition {
  readonly heightAboveFootM: Float64Array
  readonly position: Float64Array
}

/**
 * Height above the foot, and place between foot and crest, along the ways water takes.
 *
 * The height counts from where the cell's water leaves, each way by its share. The position counts from the lowest
 * place its water can reach to the highest from which water can reach it, so it never grows on the way down.
 *
 * @param filledM - level with hollows filled [m]
 * @param flow - where water goes
 * @param edge - boundary levels at the edge of the plot [m]
 * @returns height [m], 0 or more, and position [m/m], 0 (foot) to 1 (crest); 0.5 on a level plot
 */
export function slopePosition(filledM: Float64Array, flow: FlowShares, edge: EdgeFalls): SlopePosition {
  const feet = feetM(filledM, flow, edge)
  const crestM = crestsM(filledM, flow, edge)
  const reliefM = plotReliefM(filledM, flow)
  const heightAboveFootM = new Float64Array(filledM.length)
  const position = new Float64Array(filledM.length)
  for (const cell of flow.order) {
    const levelM = filledM[cell] ?? 0
    // A cell cut by the boundary may have its centre just beyond the foot or the crest.
    heightAboveFootM[cell] = Math.max(0, levelM - (feet.meanM[cell] ?? 0))
    const lowestM = feet.lowestM[cell] ?? 0
    const spanM = Math.max((crestM[cell] ?? 0) - lowestM, LEAST_CREST * reliefM)
    position[cell] = reliefM < LEVEL_PLOT_M ? NEITHER : Math.min(1, Math.max(0, (levelM - lowestM) / spanM))
  }
  return { heightAboveFootM, position }
}

function feetM(filledM: Float64Array, flow: FlowShares, edge: EdgeFalls) {
  const meanM = new Float64Array(filledM.length)
  const lowestM = new Float64Array(filledM.length)
  for (let at = flow.order.length - 1; at >= 0; at--) {
    const cell = flow.order[at] ?? 0
    const foot = footBelow(cell, flow, meanM, lowestM) ?? ownFoot(cell, filledM, edge)
    meanM[cell] = foot.meanM
    lowestM[cell] = foot.lowestM
  }
  return { meanM, lowestM }
}

interface Foot {
  readonly meanM: number
  readonly lowestM: number
}

function footBelow(
  cell: number,
  flow: FlowShares,
  means: Float64Array,
  lows: Float64Array,
): Foot | undefined {
  const [start, end] = [flow.starts[cell] ?? 0, flow.starts[cell + 1] ?? 0]
  if (start === end) return undefined
  let [meanM, lowestM] = [0, Infinity]
  for (let link = start; link < end; link++) {
    const other = flow.to[link] ?? 0
    meanM += (flow.share[link] ?? 0) * (means[other] ?? 0)
    lowestM = Math.min(lowestM, lows[other] ?? 0)
  }
  return { meanM, lowestM }
}

function ownFoot(cell: number, filledM: Float64Array, edge: EdgeFalls): Foot {
  const levelM = (edge.leaves[cell] ? edge.footM[cell] : filledM[cell]) ?? 0
  return { meanM: levelM, lowestM: levelM }
}

function crestsM(filledM: Float64Array, flow: FlowShares, edge: EdgeFalls): Float64Array {
  const crestM = Float64Array.from(filledM, (levelM, cell) =>
    edge.begins[cell] ? (edge.topM[cell] ?? levelM) : levelM,
  )
  for (const cell of flow.order) {
    const end = flow.starts[cell + 1] ?? 0
    for (let link = flow.starts[cell] ?? 0; link < end; link++) {
      const other = flow.to[link] ?? 0
      crestM[other] = Math.max(crestM[other] ?? 0, crestM[cell] ?? 0)
    }
  }
  return crestM
}

function plotReliefM(filledM: Float64Array, flow: FlowShares): number {
  const [highest, lowest] = [flow.order[0], flow.order[flow.order.length - 1]]
  return highest === undefined || lowest === undefined ? 0 : (filledM[highest] ?? 0) - (filledM[lowest] ?? 0)
}
