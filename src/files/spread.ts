/** Where the middle half of some figures lies. */
export interface Spread {
  readonly low: number
  readonly middle: number
  readonly high: number
}

/** Figures looked at: enough of a large survey to know its middle. */
const LOOKED_AT = 20_000

/**
 * Quartiles of figures, of an even sample where they are many.
 *
 * @param figures - in any order, not empty
 * @returns lower quartile, median and upper quartile
 */
export function spreadOf(figures: readonly number[]): Spread {
  const step = Math.max(1, Math.ceil(figures.length / LOOKED_AT))
  const sorted = figures.filter((_, at) => at % step === 0).sort((one, other) => one - other)
  const at = (share: number) => sorted[Math.round((sorted.length - 1) * share)] ?? 0
  return { low: at(0.25), middle: at(0.5), high: at(0.75) }
}

/**
 * Lowest and highest of many figures.
 *
 * @param figures - not empty
 * @returns both ends
 */
export function rangeOf(figures: readonly number[]): { readonly lowest: number; readonly highest: number } {
  let lowest = Infinity
  let highest = -Infinity
  for (const figure of figures) {
    if (figure < lowest) lowest = figure
    if (figure > highest) highest = figure
  }
  return { lowest, highest }
}
