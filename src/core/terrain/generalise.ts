import { eightWays, type Neighbourhood } from './neighbours'

/** Weight of each of the four pairs of opposite neighbours in the 1-2-1 binomial window: N-S, NE-SW, E-W, SE-NW. */
const pairWeights = [2 / 16, 1 / 16, 2 / 16, 1 / 16] as const

/**
 * The ground with its fine roughness smoothed away, even slopes and bends kept.
 *
 * Each pass takes the 3 × 3 binomial mean. A pair of opposite neighbours counts only when both lie in the plot, so
 * that a boundary does not bend the ground.
 *
 * @param levelM - level of each cell [m]
 * @param hood - cells of the plot and their neighbours
 * @param passes - how many times to smooth [count], 0 or more
 * @returns smoothed level of each cell [m]
 */
export function generalise(levelM: Float64Array, hood: Neighbourhood, passes: number): Float64Array {
  let from = levelM
  for (let pass = 0; pass < passes; pass++) from = smoothOnce(from, hood)
  return from
}

function smoothOnce(from: Float64Array, hood: Neighbourhood): Float64Array {
  const smooth = Float64Array.from(from)
  for (let cell = 0; cell < from.length; cell++)
    if (hood.inside[cell]) smooth[cell] = (from[cell] ?? 0) + changeAt(from, hood, cell)
  return smooth
}

function changeAt(levelM: Float64Array, hood: Neighbourhood, cell: number): number {
  const twiceM = 2 * (levelM[cell] ?? 0)
  const bits = hood.around[cell] ?? 0
  let changeM = 0
  for (let pair = 0; pair < pairWeights.length; pair++) {
    const both = (1 << pair) | (1 << (pair + eightWays.length / 2))
    if ((bits & both) !== both) continue
    const offset = hood.offsets[pair] ?? 0
    const sumM = (levelM[cell + offset] ?? 0) + (levelM[cell - offset] ?? 0)
    changeM += (pairWeights[pair] ?? 0) * (sumM - twiceM)
  }
  return changeM
}
