/** Makes the median absolute deviation of normal errors equal to 0.6745 of their standard deviation [1] (Iglewicz and Hoaglin 1993). */
const NORMAL_SHARE = 0.6745

/**
 * How far each value stands from the middle of all, in robust standard deviations.
 *
 * @param values - the values, in any unit, at least one
 * @returns modified z-score of each [1], negative below the middle; infinite where more than half the values are equal and
 * this one is not
 * @throws RangeError when there is no value
 * @see Iglewicz and Hoaglin 1993, How to Detect and Handle Outliers, ASQC Quality Press
 */
export function modifiedZ(values: Float64Array): Float64Array {
  if (values.length === 0) throw new RangeError('modifiedZ: values must be 1 or more, got 0')
  const middle = median(values)
  const spread = median(values.map((value) => Math.abs(value - middle)))
  return values.map((value) => (value === middle ? 0 : (NORMAL_SHARE * (value - middle)) / spread))
}

function median(values: Float64Array): number {
  const sorted = Float64Array.from(values).sort()
  const half = sorted.length >> 1
  return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2
}
