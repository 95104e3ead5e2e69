/**
 * Share of the ground that lies lower on the slope than each cell, 0 to 1: a short steep face spans little of it,
 * however much height it takes.
 *
 * @param position - position of each cell, 0 (foot) to 1 (crest) [ratio]
 * @param share - part of each cell to be counted, 0 to 1 [ratio]
 * @returns the share, one for each cell
 */
export function groundBelow(position: Float64Array, share: Float64Array): Float64Array {
  const order = Array.from(position.keys()).filter((cell) => (share[cell] ?? 0) > 0)
  order.sort((one, other) => (position[one] ?? 0) - (position[other] ?? 0))
  const whole = order.reduce((sum, cell) => sum + (share[cell] ?? 0), 0)
  const below = new Float64Array(position.length)
  let passed = 0
  for (const cell of order) {
    const part = share[cell] ?? 0
    below[cell] = (passed + part / 2) / whole
    passed += part
  }
  return below
}
