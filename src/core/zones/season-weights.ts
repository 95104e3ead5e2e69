import { daysInMonth, eachMonth, months, type Twelve } from '#core/units'

/**
 * How much each month counts in the season: by the radiation that open level ground gets in it, so that the weighted mean
 * of monthly ratios is the ratio of the season's totals. The season is the months in which plants grow, or the whole
 * year where the climate has none.
 *
 * @param year - whether plants grow in each month
 * @param openLevel - radiation of the month's mean day on open level ground [Wh/m²]
 * @returns weights that add up to 1 [1]; alike where the season has no light at all
 */
export function seasonWeights(
  year: Twelve<{ readonly growing: boolean }>,
  openLevel: Twelve<{ readonly usualWhPerM2: number }>,
): Twelve<number> {
  const grows = months.some((month) => year[month].growing)
  const counts = eachMonth((month) => !grows || year[month].growing)
  const lightWh = eachMonth((month) =>
    counts[month] ? openLevel[month].usualWhPerM2 * daysInMonth[month] : 0,
  )
  const wholeWh = lightWh.reduce((sum, wh) => sum + wh, 0)
  const monthsCounted = counts.filter(Boolean).length
  return eachMonth((month) => {
    if (wholeWh > 0) return lightWh[month] / wholeWh
    return counts[month] ? 1 / monthsCounted : 0
  })
}
