import { crestsM, feetM } from './crests'
import type { EdgeFalls } from './edge-falls'
import type { Neighbourhood } from './neighbours'
import type { FlowShares } from './terrain.types'

/** A top or low that stands out by less than this share of the plot's own rise is no crest or foot; own judgement [m/m]. */
const LEAST_CREST = 0.1

/** A plot that rises less than this has no foot and no crest [m]. */
const LEVEL_PLOT_M = 1e-6

/** Position on ground without foot and crest. */
const NEITHER = 0.5

/** What positions are read from. */
export interface DrainedGround {
  /** Level with hollows filled [m]. */
  readonly filledM: Float64Array
  readonly hood: Neighbourhood
  readonly flow: FlowShares
  readonly edge: EdgeFalls
}

/**
 * Relative position of every cell on its slope, from the lowest place to which the ground falls without a break to the
 * highest from which it falls: so it never grows on the way down.
 *
 * @param ground - levels, ways of water and boundary levels
 * @returns position [m/m], 0 (foot) to 1 (crest); 0.5 on a level plot
 */
export function slopePosition(ground: DrainedGround): Float64Array {
  const { filledM: levelM, hood, flow, edge } = ground
  const reliefM = plotReliefM(levelM, flow)
  const leastM = LEAST_CREST * reliefM
  const topM = atBoundaryM(levelM, edge.begins, edge.topM)
  const footM = atBoundaryM(levelM, edge.leaves, edge.footM)
  const crestM = crestsM({ hood, levelM, ownM: topM, order: flow.order }, leastM)
  const lowM = feetM({ hood, levelM, ownM: footM, order: flow.order }, leastM)
  const position = new Float64Array(levelM.length)
  const { order } = flow
  for (let at = 0; at < order.length; at++) {
    const cell = order[at]!
    const heightM = levelM[cell]! - lowM[cell]!
    const spanM = Math.max(crestM[cell]! - lowM[cell]!, leastM)
    // A cell cut by the boundary may have its centre just beyond the foot or the crest.
    position[cell] = reliefM < LEVEL_PLOT_M ? NEITHER : Math.min(1, Math.max(0, heightM / spanM))
  }
  return position
}

// Level of each cell, or of the boundary straight above or below it where there is one.
function atBoundaryM(levelM: Float64Array, meets: Uint8Array, boundaryM: Float64Array): Float64Array {
  const ownM = levelM.slice()
  for (let cell = 0; cell < ownM.length; cell++) if (meets[cell]) ownM[cell] = boundaryM[cell]!
  return ownM
}

function plotReliefM(filledM: Float64Array, flow: FlowShares): number {
  const [highest, lowest] = [flow.order[0], flow.order[flow.order.length - 1]]
  return highest === undefined || lowest === undefined ? 0 : (filledM[highest] ?? 0) - (filledM[lowest] ?? 0)
}
