/**
 * Every value times a factor.
 *
 * @param values - value of each cell [any unit]
 * @param factor - what to multiply by [any unit]
 * @returns the products [unit of the values times that of the factor]
 */
export function times(values: Float64Array, factor: number): Float64Array {
  const scaled = new Float64Array(values.length)
  for (let cell = 0; cell < values.length; cell++) scaled[cell] = values[cell]! * factor
  return scaled
}
