import { spreadOf } from './spread'

/** Factors by which a figure grows when its decimal point is lost. */
const factors = [10, 100, 1000] as const

/** Quartile distances from the middle half within which a figure belongs to the others. */
const BELONGS = 3
/** Least distance that counts as a spread, as a share of the middle figure. */
const LEAST_SPREAD = 0.02
/** A figure this many times the middle one may have lost its point. */
const FAR_ABOVE = 4

/**
 * Figures that belong to the others only when divided by 10, 100 or 1000.
 *
 * @param figures - one column of a survey
 * @returns places of the figures, and what they would be
 */
export function lostDecimals(figures: readonly number[]): { readonly at: number; readonly rather: number }[] {
  if (figures.length < 4) return []
  const { low, middle, high } = spreadOf(figures)
  const spread = Math.max(high - low, Math.abs(middle) * LEAST_SPREAD)
  const belongs = (figure: number) => figure >= low - BELONGS * spread && figure <= high + BELONGS * spread
  return figures.flatMap((figure, at) => {
    if (Math.abs(figure) < FAR_ABOVE * Math.abs(middle) || belongs(figure)) return []
    const factor = factors.find((one) => belongs(figure / one))
    return factor === undefined || figure === 0 ? [] : [{ at, rather: figure / factor }]
  })
}
