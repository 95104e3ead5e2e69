/** Plants per square metre times the spacing squared: one for squares, 2/√3 for staggered rows. */
const patternFactor = { square: 1, staggered: 2 / Math.sqrt(3) } as const

/** Distance from a plant to the middle of the gap between three neighbours, over the spacing: 1/√3. */
export const GAP_RADIUS_RATIO = 1 / Math.sqrt(3)

/**
 * Plants needed for each square metre, measured on the slope itself.
 *
 * @param spacingM - distance between neighbours along the slope [m], above 0
 * @param pattern - rows in squares, or staggered so that each plant stands in the gap of the row above
 * @returns plants for each square metre of slope [1/m²]
 * @throws RangeError when the spacing is not above 0
 */
export function plantsPerM2(spacingM: number, pattern: 'square' | 'staggered'): number {
  positive('plantsPerM2', 'spacingM', spacingM)
  return patternFactor[pattern] / spacingM ** 2
}

/**
 * Share of the ground covered by discs in staggered rows: their area less what neighbours share. Exact up to
 * closure, when three neighbours meet in the middle of the gap.
 *
 * @param radiusM - radius of one plant [m], 0 or more
 * @param spacingM - distance between neighbours [m], above 0
 * @returns covered share, 0 to 1 [m²/m²]
 * @throws RangeError when the radius is negative or the spacing is not above 0
 */
export function staggeredCover(radiusM: number, spacingM: number): number {
  positive('staggeredCover', 'spacingM', spacingM)
  if (!(radiusM >= 0)) throw new RangeError(`staggeredCover: radiusM must be 0 or more, got ${radiusM}`)
  if (radiusM >= spacingM * GAP_RADIUS_RATIO) return 1
  const ownM2 = Math.PI * radiusM ** 2 - 3 * sharedM2(radiusM, spacingM)
  return Math.min(1, plantsPerM2(spacingM, 'staggered') * ownM2)
}

// Area that two discs share: six neighbours, each shared by two, make three a plant.
function sharedM2(radiusM: number, spacingM: number): number {
  const half = spacingM / 2
  if (radiusM <= half) return 0
  return 2 * (radiusM ** 2 * Math.acos(half / radiusM) - half * Math.sqrt(radiusM ** 2 - half ** 2))
}

function positive(where: string, name: string, value: number): void {
  if (!(value > 0 && Number.isFinite(value)))
    throw new RangeError(`${where}: ${name} must be above 0, got ${value}`)
}
