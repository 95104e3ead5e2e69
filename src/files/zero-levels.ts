import type { Doubt } from './survey-read.types'

/**
 * Asks about levels of exactly zero, which most often stand where none was measured.
 *
 * @param where - name of the surface, layer or group
 * @param levels - its levels
 * @returns a doubt, or undefined when none is zero or zero lies among the other levels
 */
export function zeroLevelDoubt(where: string, levels: readonly number[]): Doubt | undefined {
  const others = levels.filter((level) => level !== 0)
  const zeros = levels.length - others.length
  if (zeros === 0) return undefined
  if (others.length === 0)
    return {
      about: 'levels',
      where,
      what: `All ${zeros} levels are exactly 0, as in a flat drawing without heights.`,
      mend: 'Use it only if the ground there really is level at 0; otherwise look for the points or texts that hold the levels.',
    }
  const above = others.some((level) => level > 0)
  const below = others.some((level) => level < 0)
  if (above && below) return undefined
  return {
    about: 'levels',
    where,
    what: `${zeros} of ${levels.length} levels are exactly 0 while all others lie ${above ? 'above' : 'below'} it: they may never have been measured.`,
    mend: 'Look at them on the plan and take out those that are no ground.',
  }
}
