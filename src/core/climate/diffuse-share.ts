/** Range of clearness that the curves were drawn through [1]; beyond it the nearest end counts (Erbs et al. 1982). */
const CLEARNESS = { least: 0.3, most: 0.8 }
/** Sunset hour angle that parts winter from the rest of the year [h of day length]: 81.4° is a day of 10.85 h. */
const WINTER_DAY_HOURS = (2 * 81.4) / 15

/**
 * Share of a month's radiation on level ground that comes from the whole sky, not straight from the sun.
 *
 * @param clearness - radiation on level ground over that above the air [1], 0 to 1
 * @param dayHours - length of the day [h], 0 to 24
 * @returns diffuse share [1], 0 to 1
 * @throws RangeError when the clearness is not from 0 to 1
 * @see Erbs, Klein & Duffie 1982, Solar Energy 28:293-302 (coefficients from memory), checked by Duffie & Beckman
 */
export function diffuseShare(clearness: number, dayHours: number): number {
  if (!(clearness >= 0 && clearness <= 1))
    throw new RangeError(`diffuseShare: clearness [1] must be from 0 to 1, got ${clearness}`)
  const k = Math.min(CLEARNESS.most, Math.max(CLEARNESS.least, clearness))
  return dayHours <= WINTER_DAY_HOURS
    ? 1.391 + k * (-3.56 + k * (4.189 - k * 2.137))
    : 1.311 + k * (-3.022 + k * (3.427 - k * 1.821))
}
