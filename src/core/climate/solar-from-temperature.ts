import { clearSkyShare } from './clear-sky-share'

/** Adjustment between span of temperature and radiation, inland and by the coast [1/√°C] (FAO-56 eq. 50). */
const HARGREAVES = { inland: 0.16, coast: 0.19 }

/** How clear a month is. */
export interface Clearness {
  /** Radiation on level ground over radiation above the air, 0 to 1. */
  readonly ofAboveAir: number
  /** Radiation on level ground over that of a clear sky, 0 to 1. */
  readonly ofClearSky: number
}

/**
 * How clear the sky is, judged by how far the day is warmer than the night. A clear sky is the limit.
 *
 * @param spanC - mean daily maximum less mean daily minimum [°C], 0 or more
 * @param coast - within some 20 km of a sea or great lake
 * @param elevationM - height above the sea [m], -430 to 6000
 * @returns radiation on level ground over that above the air and that of a clear sky [1]
 * @throws RangeError when the span is below 0
 * @see FAO-56 (Allen et al. 1998), eq. 50, after Hargreaves & Samani
 */
export function clearnessFromTemperature(spanC: number, coast: boolean, elevationM: number): Clearness {
  if (!(spanC >= 0))
    throw new RangeError(`clearnessFromTemperature: span [°C] must be 0 or more, got ${spanC}`)
  return withinClearSky((coast ? HARGREAVES.coast : HARGREAVES.inland) * Math.sqrt(spanC), elevationM)
}

/**
 * Clearness, a clear sky being the limit.
 *
 * @param ofAboveAir - radiation on level ground over radiation above the air [1], 0 or more
 * @param elevationM - height above the sea [m], -430 to 6000
 * @returns the same, at most that of a clear sky, and its share of a clear sky [1]
 */
export function withinClearSky(ofAboveAir: number, elevationM: number): Clearness {
  const limit = clearSkyShare(elevationM)
  const held = Math.min(ofAboveAir, limit)
  return { ofAboveAir: held, ofClearSky: held / limit }
}
