/** Spread of night minima about their monthly mean [°C]; own judgement, from remembered counts of air frost. */
const NIGHTLY_SPREAD_C = 3.8

/**
 * Nights of air frost to expect in a month, if night minima scatter about their mean like a bell curve.
 *
 * @param tMinC - mean daily minimum [°C], -70 to 60
 * @param days - days of the month [d], 28 to 31
 * @returns nights below 0 °C [nights]
 */
export function frostNightsOf(tMinC: number, days: number): number {
  return days * shareBelow(-tMinC / NIGHTLY_SPREAD_C)
}

// Abramowitz & Stegun 26.2.17: share of a bell curve below a score, to 1e-7.
function shareBelow(score: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(score))
  const series =
    t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))))
  const tail = (Math.exp((-score * score) / 2) / Math.sqrt(2 * Math.PI)) * series
  return score < 0 ? tail : 1 - tail
}
