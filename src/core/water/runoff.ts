/** Depth of water at a curve number of 1 and at none, in the SI form of the curve [mm]: TR-55 eq. 2-4. */
const RETENTION_SCALE_MM = 25400
const RETENTION_OFFSET_MM = 254

/** Share of the retention that wets leaves and hollows before any water runs [-]: TR-55 eq. 2-2. */
const FIRST_SHARE = 0.2

/**
 * Most water that ground of a curve number keeps back once runoff has begun.
 *
 * @param curveNumber - curve number [-], above 0 to 100
 * @returns retention [mm], 0 or more
 * @throws RangeError when the curve number is outside its range
 * @see TR-55 (1986), eq. 2-4
 */
export function retentionMm(curveNumber: number): number {
  if (!(curveNumber > 0 && curveNumber <= 100))
    throw new RangeError(`retentionMm: curveNumber must be above 0 to 100, got ${curveNumber}`)
  return RETENTION_SCALE_MM / curveNumber - RETENTION_OFFSET_MM
}

/**
 * Water that runs off during one day's rain.
 *
 * @param waterMm - rain and water run on from above [mm], 0 or more
 * @param keptMm - retention of the ground that day [mm], 0 or more
 * @returns runoff [mm], 0 to `waterMm`
 * @throws RangeError when an input is negative
 * @see TR-55 (1986), eq. 2-3
 */
export function runoffMm(waterMm: number, keptMm: number): number {
  if (!(waterMm >= 0 && keptMm >= 0))
    throw new RangeError(`runoffMm: water and retention must be 0 or more, got ${waterMm} and ${keptMm}`)
  const beyondFirst = waterMm - FIRST_SHARE * keptMm
  if (beyondFirst <= 0) return 0
  return beyondFirst ** 2 / (beyondFirst + keptMm)
}
