/** Clear-sky radiation over radiation above the air at sea level [1], and its gain with height [1/m] (FAO-56 eq. 37). */
const CLEAR = { atSeaLevel: 0.75, perM: 2e-5 }

/**
 * Clear-sky radiation over radiation above the air.
 *
 * @param elevationM - height above the sea [m], -430 to 6000
 * @returns share of radiation that comes through a clear sky [1]
 * @see FAO-56 (Allen et al. 1998), eq. 37
 */
export function clearSkyShare(elevationM: number): number {
  return CLEAR.atSeaLevel + CLEAR.perM * elevationM
}
