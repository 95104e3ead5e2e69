import { ALL_AROUND, eightWays, type Neighbourhood } from './neighbours'

/** Weight of each of the four pairs of opposite neighbours in the 1-2-1 binomial window: N-S, NE-SW, E-W, SE-NW. */
const pairWeights = [2 / 16, 1 / 16, 2 / 16, 1 / 16] as const

/**
 * A field of values with its fine roughness smoothed away, even trends kept.
 *
 * Each pass takes the 3 × 3 binomial mean. A pair of opposite neighbours counts only when both lie in the plot, so
 * that a boundary does not bend the field.
 *
 * @param values - value of each cell [any unit]
 * @param hood - cells of the plot and their neighbours
 * @param passes - how many times to smooth [count], 0 or more
 * @returns smoothed value of each cell [same unit]
 */
export function generalise(values: Float64Array, hood: Neighbourhood, passes: number): Float64Array {
  let from = values
  for (let pass = 0; pass < passes; pass++) from = smoothOnce(from, hood)
  return from
}

function smoothOnce(from: Float64Array, hood: Neighbourhood): Float64Array {
  const smooth = from.slice()
  for (let cell = 0; cell < from.length; cell++) {
    const bits = hood.around[cell]!
    if (bits === ALL_AROUND) smooth[cell] = binomialMean(from, cell, hood.columns)
    else if (bits > 0) smooth[cell] = from[cell]! + changeAt(from, hood, cell)
  }
  return smooth
}

function binomialMean(values: Float64Array, cell: number, columns: number): number {
  const north = cell - columns
  const south = cell + columns
  const northern = values[north - 1]! + 2 * values[north]! + values[north + 1]!
  const own = values[cell - 1]! + 2 * values[cell]! + values[cell + 1]!
  const southern = values[south - 1]! + 2 * values[south]! + values[south + 1]!
  return (northern + 2 * own + southern) / 16
}

// The same mean where some neighbours lie outside the plot.
function changeAt(values: Float64Array, hood: Neighbourhood, cell: number): number {
  const twice = 2 * (values[cell] ?? 0)
  const bits = hood.around[cell] ?? 0
  let change = 0
  for (let pair = 0; pair < pairWeights.length; pair++) {
    const both = (1 << pair) | (1 << (pair + eightWays.length / 2))
    if ((bits & both) !== both) continue
    const offset = hood.offsets[pair] ?? 0
    const sum = (values[cell + offset] ?? 0) + (values[cell - offset] ?? 0)
    change += (pairWeights[pair] ?? 0) * (sum - twice)
  }
  return change
}
