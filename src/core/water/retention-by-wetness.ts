import { dryCurveNumber, wetCurveNumber } from './curve-number'
import { retentionMm } from './runoff'

/** Retention of ground that is full to the brim [mm]: SWAT 2009, a curve number of 99. */
const RETENTION_WHEN_FULL_MM = 2.54

/**
 * Retention of the ground by how much water it holds: most when dry, almost none when full.
 *
 * @param curveNumber - curve number at usual wetness [-], 30 to 98
 * @param fieldCapacityMm - water above the wilting point at field capacity [mm], above 0
 * @param saturationMm - water above the wilting point when full [mm], above field capacity
 * @returns a function from water above the wilting point [mm] to retention [mm]
 * @throws RangeError when the marks are not in order
 * @see SWAT 2009, eqs 2:1.1.6 to 2:1.1.8
 */
export function retentionByWetness(
  curveNumber: number,
  fieldCapacityMm: number,
  saturationMm: number,
): (waterMm: number) => number {
  if (!(fieldCapacityMm > 0 && saturationMm > fieldCapacityMm))
    throw new RangeError(
      `retentionByWetness: marks must be above 0 and in order, got ${fieldCapacityMm} and ${saturationMm}`,
    )
  const dryMm = retentionMm(dryCurveNumber(curveNumber))
  const wetMm = retentionMm(wetCurveNumber(curveNumber))
  const atCapacity = bend(fieldCapacityMm, wetMm / dryMm)
  const atFull = bend(saturationMm, RETENTION_WHEN_FULL_MM / dryMm)
  const fall = (atCapacity - atFull) / (saturationMm - fieldCapacityMm)
  const start = atCapacity + fall * fieldCapacityMm
  return (waterMm) => dryMm * (1 - waterMm / (waterMm + Math.exp(start - fall * waterMm)))
}

// Height of the curve's exponent that leaves `share` of the dry retention at `waterMm`.
function bend(waterMm: number, share: number): number {
  return Math.log(waterMm / (1 - share) - waterMm)
}
