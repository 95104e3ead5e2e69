/** Cooling of clear, calm dawns with each metre below the crest [°C/m] (Hocevar & Martsolf 1971, read as 6.2 °C in 100 m). */
const COLDER_BELOW_C_PER_M = 0.062
/** Part of it felt at an open foot of a slope; half the slope up it is gone [1]; own judgement. */
const OPEN_FOOT_SHARE = 0.5
/** Most that cold air is let add [°C]; own judgement: half of what whole valleys show. */
const MOST_COLDER_C = 6

/**
 * How much colder a place gets on clear, calm nights because cold air runs down to it.
 *
 * @param heightBelowCrestM - height below the highest ground of the plot [m], 0 or more
 * @param position - place on the slope [1], 0 foot to 1 crest
 * @returns how much colder than the crest [°C], 0 to 6
 * @throws RangeError when a value is outside its range
 * @see Hocevar & Martsolf 1971, Agricultural Meteorology 8:371-383
 */
export function coldAirC(heightBelowCrestM: number, position: number): number {
  if (!(heightBelowCrestM >= 0 && Number.isFinite(heightBelowCrestM)))
    throw new RangeError(`coldAirC: height below the crest [m] must be 0 or more, got ${heightBelowCrestM}`)
  if (!(position >= 0 && position <= 1))
    throw new RangeError(`coldAirC: position [1] must be 0 to 1, got ${position}`)
  const pooling = OPEN_FOOT_SHARE * Math.max(0, 1 - 2 * position)
  return Math.min(MOST_COLDER_C, COLDER_BELOW_C_PER_M * heightBelowCrestM * pooling)
}
