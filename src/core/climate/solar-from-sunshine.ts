import { withinClearSky, type Clearness } from './solar-from-temperature'

/** Share of radiation above the air that comes through on overcast days, and what full sunshine adds [1] (FAO-56 eq. 35). */
const ANGSTROM = { overcast: 0.25, sunshine: 0.5 }

/**
 * How clear the sky is, judged by hours of bright sunshine. A clear sky is the limit.
 *
 * @param sunshineHours - bright sunshine [h a day], 0 to 24; more than the day is long counts as the whole day
 * @param dayHours - length of the day [h], above 0 to 24
 * @param elevationM - height above the sea [m], -430 to 6000
 * @returns radiation on level ground over that above the air and that of a clear sky [1]
 * @throws RangeError when the sunshine is not 0 to 24 h or the day has no length
 * @see FAO-56 (Allen et al. 1998), eq. 35, after Ångström
 */
export function clearnessFromSunshine(
  sunshineHours: number,
  dayHours: number,
  elevationM: number,
): Clearness {
  if (!(sunshineHours >= 0 && sunshineHours <= 24))
    throw new RangeError(`clearnessFromSunshine: sunshine [h] must be 0 to 24, got ${sunshineHours}`)
  if (!(dayHours > 0 && dayHours <= 24))
    throw new RangeError(`clearnessFromSunshine: day [h] must be above 0 to 24, got ${dayHours}`)
  const share = Math.min(1, sunshineHours / dayHours)
  return withinClearSky(ANGSTROM.overcast + ANGSTROM.sunshine * share, elevationM)
}
