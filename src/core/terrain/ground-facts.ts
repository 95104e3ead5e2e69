import type { Surface } from '#core/survey'
import { drainageOrder } from './drainage-order'
import { edgeFalls } from './edge-falls'
import { fillHollows } from './fill-hollows'
import { flowShares } from './flow-shares'
import { generalisedGround, generalisedWidthM } from './generalised-ground'
import { gradients, type Gradients } from './gradients'
import { heightAboveFootM } from './height-above-foot'
import { spreadBetweenTwo } from './infinite-directions'
import { inflowM2, type SheddingStretch } from './inflow'
import { neighbourhood, type Neighbourhood } from './neighbours'
import { once } from './once'
import { relativePosition } from './relative-position'
import { slopeAspect, type SlopeAspect } from './slope-aspect'
import { slopeForm, type SlopeForm } from './slope-form'
import { slopePosition } from './slope-position'
import { spreadFlow } from './spread-flow'
import { standingsOf, type Standings } from './standings'
import { handOn, steepestWays } from './steepest-way'
import type { FlowShares } from './terrain.types'
import { times } from './times'
import { topographicPositionM } from './topographic-position'
import { wetnessIndex } from './wetness-index'

/** Every fact of the ground that can be asked for, each worked out when first asked and then kept. */
export interface GroundFacts {
  readonly hood: () => Neighbourhood
  readonly slopes: () => Gradients
  readonly steepness: () => SlopeAspect
  readonly form: () => SlopeForm
  /** Level with hollows filled [m]. */
  readonly filledM: () => Float64Array
  readonly flow: () => FlowShares
  readonly heightAboveFootM: () => Float64Array
  readonly position: () => Float64Array
  /** Place between the foot and the highest source along the ways of water, 0 to 1. */
  readonly relativePosition: () => Float64Array
  /** Plan area off the plot that drains onto each cell at its edge [m²]; undefined when none does. */
  readonly inflowM2: () => Float64Array | undefined
  /** What each cell gives of its own: its part in the plot, and the ground beyond that drains onto it [cells]. */
  readonly sources: () => Float64Array
  /** Cells that drain through each cell by all ways, a cut cell counting its part, ground beyond the boundary as described [cells]. */
  readonly accumulation: () => Float64Array
  readonly upslopeAreaM2: () => Float64Array
  /** Area drained through a metre of contour [m²/m]. */
  readonly catchmentM: () => Float64Array
  /** Neighbour down the steepest way, as index in `eightWays`; -1 where water leaves. */
  readonly steepestWays: () => Int8Array
  /** Cells that drain through each cell by the steepest ways alone [cells]. */
  readonly accumulationD8: () => Float64Array
  /** The same with water between the two ways on either side of the fall [cells]. */
  readonly accumulationDinf: () => Float64Array
  /** Topographic position within a radius of some cells [m]. */
  readonly standing: (radiusCells: number) => Float64Array
  readonly standings: () => Standings
  /** Wetness of the cells as they are, ln of metres. */
  readonly wetnessIndexRaw: () => Float64Array
  /** Wetness of the generalised ground, ln of metres. */
  readonly wetnessIndex: () => Float64Array
}

/**
 * The facts of the ground, none of them worked out yet.
 *
 * @param surface - the ground as a grid of cells
 * @param beyond - what was described of the ground beyond the boundary
 * @returns one function for each fact; what it gives is said in `Terrain`, or where the fact is made
 */
export function groundFacts(surface: Surface, beyond: readonly SheddingStretch[] = []): GroundFacts {
  const { frame, share, levelM } = surface
  const cellM2 = frame.cellM ** 2
  const hood = once(() => neighbourhood(surface))
  const slopes = once(() => gradients(surface, hood()))
  const steepness = once(() => slopeAspect(slopes()))
  const filled = once(() => fillHollows(levelM, hood()))
  const edge = once(() => edgeFalls(surface, hood(), slopes()))
  const ways = once(() => ({
    hood: hood(),
    filled: filled(),
    slopes: slopes(),
    leaves: edge().leaves,
    order: once(() => drainageOrder(hood(), filled())),
  }))
  const flow = once(() => flowShares(ways()))
  const drained = once(() => ({ filledM: filled().filledM, hood: hood(), flow: flow(), edge: edge() }))
  const heightM = once(() => heightAboveFootM(drained()))
  const inflow = once(() => inflowM2(surface, beyond))
  const sources = once(() => withInflow(share, inflow(), cellM2))
  const accumulation = once(() => spreadFlow(sources(), ways()))
  const steepest = once(() => steepestWays(ways()))
  const catchmentM = once(() => times(accumulation(), frame.cellM))
  return {
    hood,
    slopes,
    steepness,
    form: once(() => slopeForm(surface, hood(), slopes())),
    filledM: () => filled().filledM,
    flow,
    heightAboveFootM: heightM,
    position: once(() => slopePosition(drained())),
    relativePosition: once(() => relativePosition(drained(), heightM())),
    inflowM2: inflow,
    sources,
    accumulation,
    upslopeAreaM2: once(() => times(accumulation(), cellM2)),
    catchmentM,
    steepestWays: steepest,
    accumulationD8: once(() => handOn(sources(), steepest(), ways())),
    accumulationDinf: once(() => spreadBetweenTwo(sources(), ways())),
    standing: (radiusCells: number) => topographicPositionM(levelM, hood(), radiusCells),
    standings: once(() => standingsOf(surface, hood(), steepness().slopeDeg)),
    wetnessIndexRaw: once(() => wetnessIndex(catchmentM(), slopes(), hood())),
    wetnessIndex: once((): Float64Array => {
      const generalised = generalisedGround(surface, hood(), generalisedWidthM(surface))
      return groundFacts(generalised, beyond).wetnessIndexRaw()
    }),
  }
}

// Parts of cells that lie in the plot, with the ground beyond that drains onto each, in cells too.
function withInflow(share: Float64Array, inflow: Float64Array | undefined, cellM2: number): Float64Array {
  return inflow ? share.map((part, cell) => part + inflow[cell]! / cellM2) : share
}
