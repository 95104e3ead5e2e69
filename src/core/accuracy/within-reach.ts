/** Standard errors to each side that hold the truth nineteen times in twenty [1]: 95 % of the normal law. */
const REACH_IN_ERRORS = 2

/**
 * Whether a limit lies so near to a figure that the figure's error could put it on the other side.
 *
 * @param value - the figure [its own unit]
 * @param limit - the limit [the same unit]
 * @param sd - standard error of the figure [the same unit], 0 or more
 * @returns true when the limit lies within two standard errors of the figure
 * @throws RangeError when the standard error is negative or not finite
 * @see JCGM 100:2008, Guide to the expression of uncertainty in measurement, clause 6.3.3
 */
export function withinReach(value: number, limit: number, sd: number): boolean {
  if (!(sd >= 0 && sd < Infinity)) throw new RangeError(`withinReach: sd must be 0 or more, got ${sd}`)
  return sd > 0 && Math.abs(value - limit) <= REACH_IN_ERRORS * sd
}
