/** Makes the median absolute deviation of normal errors equal to 0.6745 of their standard deviation [1] (Iglewicz and Hoaglin 1993). */
const NORMAL_SHARE = 0.6745

/** The middle of some values and how far they usually stray from it. */
export interface RobustScale {
  readonly middle: number
  /** Median absolute deviation from the middle. */
  readonly spread: number
}

/**
 * The middle and spread of values, hardly moved by a few wrong ones.
 *
 * @param values - the values, in any unit, at least one
 * @returns their median and the median absolute deviation from it
 * @throws RangeError when there is no value
 * @see Iglewicz and Hoaglin 1993, How to Detect and Handle Outliers, ASQC Quality Press
 */
export function robustScale(values: Float64Array): RobustScale {
  if (values.length === 0) throw new RangeError('robustScale: values must be 1 or more, got 0')
  const middle = median(values)
  return { middle, spread: median(values.map((value) => Math.abs(value - middle))) }
}

/**
 * How far a value stands from the middle of all, in robust standard deviations.
 *
 * @param value - the value [the unit of the scale]
 * @param scale - middle and spread of all values
 * @returns modified z-score [1], negative below the middle; infinite where the spread is 0 and the value is not the middle
 * @see Iglewicz and Hoaglin 1993, How to Detect and Handle Outliers, ASQC Quality Press
 */
export function modifiedZ(value: number, scale: RobustScale): number {
  const { middle, spread } = scale
  return value === middle ? 0 : (NORMAL_SHARE * (value - middle)) / spread
}

function median(values: Float64Array): number {
  const sorted = Float64Array.from(values).sort()
  const half = sorted.length >> 1
  return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2
}
