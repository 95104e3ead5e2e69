import type { Gradients } from './gradients'
import type { Neighbourhood } from './neighbours'

/** Flatter ground counts as this steep, so that the index stays finite: 1 mm in 1 m [m/m]; own judgement. */
const LEAST_GRADIENT = 0.001

/**
 * Topographic wetness of every cell: logarithm of the area drained through a metre of contour over the gradient.
 *
 * @param catchmentM - specific catchment area, plan area drained through a metre of contour [m²/m]
 * @param slopes - rise of the ground eastward and northward [m/m]
 * @param hood - cells of the plot
 * @returns index, ln of metres; 0 outside the plot
 * @see Beven and Kirkby 1979, Hydrological Sciences Bulletin 24: 43-69
 */
export function wetnessIndex(catchmentM: Float64Array, slopes: Gradients, hood: Neighbourhood): Float64Array {
  const { east, north } = slopes
  const { inside } = hood
  const index = new Float64Array(catchmentM.length)
  for (let cell = 0; cell < index.length; cell++) {
    if (!inside[cell]) continue
    const gradient = Math.sqrt(east[cell]! * east[cell]! + north[cell]! * north[cell]!)
    index[cell] = Math.log(catchmentM[cell]! / Math.max(LEAST_GRADIENT, gradient))
  }
  return index
}
