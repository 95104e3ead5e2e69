/**
 * Rounds parts so that they add up to their rounded total: what rounding leaves over goes to those that lost most by it.
 *
 * @param total - what the parts make together
 * @param parts - figures whose sum is the total, in its unit
 * @param decimals - decimals kept
 * @returns the parts, rounded; each within some two units of the last decimal
 */
export function addingUp(total: number, parts: readonly number[], decimals: number): number[] {
  const scale = 10 ** decimals
  const units = parts.map((part) => Math.floor(part * scale))
  const order = parts
    .map((part, at) => ({ at, lost: part * scale - Math.floor(part * scale) }))
    .sort((one, other) => other.lost - one.lost || one.at - other.at)
  const largest = parts.indexOf(Math.max(...parts))
  let left = Math.round(total * scale) - units.reduce((sum, one) => sum + one, 0)
  for (const { at } of order) {
    if (left <= 0) break
    units[at] = (units[at] ?? 0) + 1
    left -= 1
  }
  // What is still over comes of a total that was rounded itself.
  if (largest >= 0) units[largest] = (units[largest] ?? 0) + left
  // Adding 0 turns -0 into 0.
  return units.map((unit) => Number((unit / scale).toFixed(decimals)) + 0)
}
