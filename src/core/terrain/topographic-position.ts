import { meanAround } from './mean-around'
import type { Neighbourhood } from './neighbours'

/**
 * How far every cell stands above (+) or below (-) the mean of the ground around it.
 *
 * @param levelM - level of each cell [m]
 * @param hood - cells of the plot
 * @param radiusCells - radius of the round window [cells], 1 or more; the cell itself counts in its mean
 * @returns topographic position index [m]; 0 outside the plot
 * @throws RangeError when the radius is below 1 or not finite
 * @see Guisan, Weiss and Weiss 1999, Plant Ecology 143: 107-122
 */
export function topographicPositionM(
  levelM: Float64Array,
  hood: Neighbourhood,
  radiusCells: number,
): Float64Array {
  if (!(radiusCells >= 1))
    throw new RangeError(`topographicPositionM: radiusCells must be 1 or more, got ${radiusCells}`)
  const indexM = meanAround(levelM, hood, radiusCells)
  for (let cell = 0; cell < indexM.length; cell++)
    if (hood.inside[cell]) indexM[cell] = levelM[cell]! - indexM[cell]!
  return indexM
}
