/** Demand at which the table's share holds [mm/d], change of the share per mm/d, and its limits: FAO-56 table 22, note 2. */
const TABLE_DEMAND_MM = 5
const SHARE_PER_MM = 0.04
const LEAST_SHARE = 0.1
const MOST_SHARE = 0.8

/** A day's demand above this share of the hard water is taken bit by bit through the day [-]: own judgement. */
const GREEDY_SHARE = 0.5

/**
 * Share of the plants' water that they take up before they slow down, on a day of given demand.
 *
 * @param easyShare - share of the table, at 5 mm a day [0 to 1]
 * @param demandMmPerDay - what the cover would use [mm/d], 0 or more
 * @returns share [0.1 to 0.8]
 * @throws RangeError when the demand is negative
 * @see FAO-56, table 22 and eq. 84 notes
 */
export function easyShareAt(easyShare: number, demandMmPerDay: number): number {
  if (!(demandMmPerDay >= 0))
    throw new RangeError(`easyShareAt: demandMmPerDay must be 0 or more, got ${demandMmPerDay}`)
  const share = easyShare + SHARE_PER_MM * (TABLE_DEMAND_MM - demandMmPerDay)
  return Math.min(MOST_SHARE, Math.max(LEAST_SHARE, share))
}

/**
 * How far plants keep up their use of water in drying soil.
 *
 * @param missingMm - water missing from field capacity at the start of the day [mm], 0 to `holdsMm`
 * @param holdsMm - water for plants at field capacity [mm], above 0
 * @param easyShare - share taken up before plants slow down [0 to below 1]
 * @returns stress coefficient [-], 1 (keeps up) to 0 (wilts)
 * @throws RangeError when an input is outside its range
 * @see FAO-56, eq. 84
 */
export function stressCoefficient(missingMm: number, holdsMm: number, easyShare: number): number {
  if (!(holdsMm > 0 && missingMm >= 0 && missingMm <= holdsMm && easyShare >= 0 && easyShare < 1))
    throw new RangeError(
      `stressCoefficient: outside range, got ${missingMm} of ${holdsMm} mm missing, share ${easyShare}`,
    )
  return Math.min(1, (holdsMm - missingMm) / ((1 - easyShare) * holdsMm))
}

/**
 * Water that plants and the bare surface take from the soil in a day.
 *
 * The stress of the day's start stands for the day, as in FAO-56. Where a day asks for more than half
 * of the water held under stress (thin soil, hot day), it is taken bit by bit as the soil dries.
 *
 * @param waterMm - water above the wilting point at the day's start [mm], 0 or more
 * @param holdsMm - water for plants at field capacity [mm], above 0
 * @param demandMm - what the cover would use with water enough [mm], 0 or more
 * @param easyShare - share taken up before plants slow down [0 to below 1]
 * @returns water taken [mm], 0 to `demandMm`, never more than there is
 * @throws RangeError when an input is outside its range
 * @see FAO-56, eqs 81 and 84
 */
export function plantUseMm(waterMm: number, holdsMm: number, demandMm: number, easyShare: number): number {
  const missingMm = Math.max(0, holdsMm - waterMm)
  const stress = stressCoefficient(missingMm, holdsMm, easyShare)
  const hardMm = (1 - easyShare) * holdsMm
  if (demandMm <= GREEDY_SHARE * hardMm) return stress * demandMm
  const easyMm = Math.max(0, waterMm - hardMm)
  if (easyMm >= demandMm) return demandMm
  return easyMm + Math.min(waterMm, hardMm) * (1 - Math.exp(-(demandMm - easyMm) / hardMm))
}
