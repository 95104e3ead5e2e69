import { ALL_AROUND, eightWays } from './neighbours'
import { LEAVES, steepestWay } from './steepest-way'
import type { FlowGround } from './weigh-ways'

/** Angle between two neighbouring ways [rad]. */
const EIGHTH = Math.PI / 4

/** The steepest of the eight triangles around a cell, and the direction of its fall. */
export interface Fall {
  /** Straight neighbour of the triangle, as index in `eightWays`. */
  straight: number
  /** Its slanting neighbour. */
  slanting: number
  /** Share that the slanting one takes, 0 to 1; the straight one takes the rest. */
  share: number
  /** Drop over one cell along the fall [m]; 0 where none of the eight falls. */
  dropM: number
}

/**
 * Direction of the steepest fall from a cell that has all its neighbours, any of endlessly many: the steepest of the
 * eight triangles between the cell, a straight neighbour and a slanting one beside it.
 *
 * @param fall - takes the answer
 * @param levelM - levels of all cells [m]
 * @param offsets - what to add to a cell's index to reach each neighbour
 * @param cell - index of the cell [count]
 * @see Tarboton 1997, Water Resources Research 33: 309-319
 */
export function steepestFall(
  fall: Fall,
  levelM: Float64Array,
  offsets: readonly number[],
  cell: number,
): void {
  const hereM = levelM[cell]!
  let [steepest, steepestOutM, steepestAsideM] = [0, 0, 0]
  fall.dropM = 0
  for (let facet = 0; facet < eightWays.length; facet++) {
    const straightM = levelM[cell + offsets[straightOf(facet)]!]!
    const outM = hereM - straightM
    const asideM = straightM - levelM[cell + offsets[facet | 1]!]!
    const dropM = dropOn(outM, asideM)
    if (dropM <= fall.dropM) continue
    fall.dropM = dropM
    steepest = facet
    steepestOutM = outM
    steepestAsideM = asideM
  }
  fall.straight = straightOf(steepest)
  fall.slanting = steepest | 1
  fall.share = shareAside(steepestOutM, steepestAsideM)
}

// Straight ways have even indices; each has a triangle on either side.
function straightOf(facet: number): number {
  return facet & 1 ? (facet + 1) & 7 : facet
}

// Along the triangle's own fall, or along its edge where the fall points beyond it.
function dropOn(outM: number, asideM: number): number {
  if (asideM <= 0) return outM
  if (asideM >= outM) return (outM + asideM) * Math.SQRT1_2
  return Math.sqrt(outM * outM + asideM * asideM)
}

// Angle of the fall from the straight way, as a share of the angle between the two.
function shareAside(outM: number, asideM: number): number {
  if (asideM <= 0) return 0
  return asideM >= outM ? 1 : Math.atan(asideM / outM) / EIGHTH
}

/**
 * What passes through every cell when each hands on all it has in the direction of its steepest fall, shared between
 * the two neighbours on either side of that direction by its angle from them.
 *
 * Cells at the edge of the plot, and on level stretches, hand it to the steepest one neighbour.
 *
 * @param own - what each cell has of its own [any unit]
 * @param ground - where water can go
 * @returns what passes through each cell, its own included [same unit]; 0 outside the plot
 * @see Tarboton 1997, Water Resources Research 33: 309-319
 */
export function spreadBetweenTwo(own: Float64Array, ground: FlowGround): Float64Array {
  const { hood, filled, leaves } = ground
  const passing = own.slice()
  const fall: Fall = { straight: 0, slanting: 1, share: 0, dropM: 0 }
  const order = ground.order()
  for (let at = 0; at < order.length; at++) {
    const cell = order[at]!
    if (leaves[cell]) continue
    if (hood.around[cell] !== ALL_AROUND || filled.wayOut[cell]! > 0) handToOne(passing, ground, cell)
    else {
      steepestFall(fall, filled.filledM, hood.offsets, cell)
      if (fall.dropM <= 0) continue
      const handed = passing[cell]! * fall.share
      passing[cell + hood.offsets[fall.slanting]!]! += handed
      passing[cell + hood.offsets[fall.straight]!]! += passing[cell]! - handed
    }
  }
  return passing
}

function handToOne(passing: Float64Array, ground: FlowGround, cell: number): void {
  const way = steepestWay(ground, cell)
  if (way !== LEAVES) passing[cell + ground.hood.offsets[way]!]! += passing[cell]!
}
