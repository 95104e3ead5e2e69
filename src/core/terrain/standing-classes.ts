import type { Neighbourhood } from './neighbours'

/** Bounds between classes, in standard deviations of the index [ratio]; Weiss 2001. */
const FAR = 1
const NEAR = 0.5

/** Steeper than this the middle is a slope, else it is flat [°]; Weiss 2001. */
const FLAT_DEG = 5

/** An index that spreads less than this over the plot is rounding or survey error: all is middle [m]; own judgement. */
const LEAST_SPREAD_M = 0.001

/**
 * Class of every cell by its topographic position: 1 ridge, 2 upper slope, 3 middle slope, 4 flat, 5 lower slope,
 * 6 valley.
 *
 * @param indexM - topographic position index of each cell [m]
 * @param slopeDeg - steepness of each cell [°]
 * @param hood - cells of the plot
 * @returns class of each cell; 0 outside the plot
 * @see Weiss 2001, Topographic position and landforms analysis, Esri User Conference, San Diego
 */
export function standingClasses(
  indexM: Float64Array,
  slopeDeg: Float64Array,
  hood: Neighbourhood,
): Uint8Array {
  const { inside } = hood
  const spreadM = spreadOf(indexM, inside)
  const perSpread = spreadM < LEAST_SPREAD_M ? 0 : 1 / spreadM
  const classes = new Uint8Array(indexM.length)
  for (let cell = 0; cell < classes.length; cell++)
    if (inside[cell]) classes[cell] = classOf(indexM[cell]! * perSpread, slopeDeg[cell]!)
  return classes
}

function classOf(standing: number, slopeDeg: number): number {
  if (standing > FAR) return 1
  if (standing > NEAR) return 2
  if (standing >= -NEAR) return slopeDeg > FLAT_DEG ? 3 : 4
  return standing >= -FAR ? 5 : 6
}

// Standard deviation over the plot's cells.
function spreadOf(values: Float64Array, inside: Uint8Array): number {
  let [count, sum, squares] = [0, 0, 0]
  for (let cell = 0; cell < values.length; cell++) {
    if (!inside[cell]) continue
    count += 1
    sum += values[cell]!
    squares += values[cell]! ** 2
  }
  return count === 0 ? 0 : Math.sqrt(Math.max(0, squares / count - (sum / count) ** 2))
}
