import type { Plant } from './plant.schema'

/** Share of each part in the binding class [own synthesis for ranking, not design values]. */
const bindingShares = { mat: 0.35, depth: 0.25, regrowth: 0.2, yearRound: 0.2 } as const

/**
 * How well a plant holds the top of a bank: a class for ranking plants, never a strength for design.
 *
 * @param parts - top mat, depth, regrowth and year-round cover, each 0 to 5 [class]
 * @returns 0 (holds nothing) to 5 (suckering shrubs, live stakes, deep-rooted trees), whole [class]
 * @throws RangeError when a part is outside 0 to 5
 */
export function bindingClass(parts: Plant['binding']): number {
  const sum = (Object.keys(bindingShares) as (keyof typeof bindingShares)[]).reduce((running, part) => {
    const value = parts[part]
    if (!(value >= 0 && value <= 5))
      throw new RangeError(`bindingClass: ${part} must be 0 to 5, got ${value}`)
    return running + bindingShares[part] * value
  }, 0)
  // Guards halves against the rounding of binary fractions.
  return Math.round(sum + 1e-9)
}
