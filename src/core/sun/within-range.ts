/**
 * Refuses a number outside its range.
 *
 * @param name - what the number is, with its unit, such as "latitude [°]"
 * @param value - the number to look at [any]
 * @param least - lowest allowed value [any]
 * @param most - highest allowed value [any]
 * @throws RangeError when the value is not a number from `least` to `most`
 */
export function withinRange(name: string, value: number, least: number, most: number): void {
  if (!(value >= least && value <= most))
    throw new RangeError(`${name} must be from ${least} to ${most}, got ${value}`)
}
