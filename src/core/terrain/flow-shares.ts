import type { Surface } from '#core/survey'
import type { FilledGround } from './fill-hollows'
import { eightWays, wayLengths, type Neighbourhood } from './neighbours'
import type { FlowShares } from './terrain.types'

/** How strongly water prefers the steeper way (Freeman 1991) [exponent]. */
const STEEPNESS_EXPONENT = 1.1

/**
 * Where the water of every cell goes next: to all lower neighbours, more to the steeper.
 *
 * On level stretches it goes to the neighbours nearer to the outlet, shared out in the same manner. Where the ground falls straight out of
 * the plot, and at the lip of the edge, it leaves.
 *
 * @param surface - the ground
 * @param hood - its cells and their neighbours
 * @param filled - the ground with hollows filled
 * @param leaves - 1 for each cell whose ground falls straight out of the plot
 * @returns links with their shares; the shares of a cell add up to 1, or it has no link where water leaves
 * @see Freeman 1991, Computers & Geosciences 17: 413-422
 */
export function flowShares(
  surface: Surface,
  hood: Neighbourhood,
  filled: FilledGround,
  leaves: Uint8Array,
): FlowShares {
  const cells = surface.share.length
  const starts = new Uint32Array(cells + 1)
  const to = new Uint32Array(filled.risingOrder.length * eightWays.length)
  const share = new Float64Array(to.length)
  let links = 0
  for (let cell = 0; cell < cells; cell++) {
    starts[cell] = links
    if (hood.inside[cell] && !leaves[cell]) links = addLinks({ to, share, first: links }, cell, hood, filled)
  }
  starts[cells] = links
  return {
    starts,
    to: to.slice(0, links),
    share: share.slice(0, links),
    order: filled.risingOrder.slice().reverse(),
  }
}

interface Links {
  readonly to: Uint32Array
  readonly share: Float64Array
  readonly first: number
}

// Returns where the next cell's links begin.
function addLinks(links: Links, cell: number, hood: Neighbourhood, filled: FilledGround): number {
  const { to, share, first } = links
  const bits = hood.around[cell] ?? 0
  const dropTo = (filled.wayOut[cell] ?? 0) > 0 ? gainOnLevel : dropM
  let end = first
  for (let way = 0; way < eightWays.length; way++) {
    if (!(bits & (1 << way))) continue
    const other = cell + (hood.offsets[way] ?? 0)
    const drop = dropTo(filled, cell, other)
    if (!(drop > 0)) continue
    // Cell sides cancel out between the neighbours of one cell, so the drop per cell stands for the gradient.
    to[end] = other
    share[end++] = (drop / (wayLengths[way] ?? 1)) ** STEEPNESS_EXPONENT
  }
  shareOut(share, first, end)
  return end
}

function shareOut(share: Float64Array, first: number, end: number): void {
  let total = 0
  for (let link = first; link < end; link++) total += share[link] ?? 0
  for (let link = first; link < end; link++) share[link] = (share[link] ?? 0) / total
}

function dropM({ filledM }: FilledGround, cell: number, other: number): number {
  return (filledM[cell] ?? 0) - (filledM[other] ?? 0)
}

// How much nearer to the outlet a neighbour on the same level lies [cells].
function gainOnLevel({ filledM, wayOut }: FilledGround, cell: number, other: number): number {
  return filledM[other] === filledM[cell] ? (wayOut[cell] ?? 0) - (wayOut[other] ?? 0) : 0
}
