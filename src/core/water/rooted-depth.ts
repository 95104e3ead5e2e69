import type { SoilProperties } from '#core/soil'

/** Millimetres in a metre [mm/m]. */
const MM_PER_M = 1000

/**
 * Depth of soil that roots draw on.
 *
 * @param soil - the soil
 * @param rootM - depth the cover's roots would go to [m], above 0
 * @returns the lesser of both depths [m] and the share it is of the soil's depth [0 to 1]
 * @throws RangeError when the root depth is not above 0
 */
export function rootedDepth(
  soil: SoilProperties,
  rootM: number,
): { depthM: number; share: number; mm: number } {
  if (!(rootM > 0)) throw new RangeError(`rootedDepth: rootM must be above 0, got ${rootM}`)
  const depthM = Math.min(soil.depthM, rootM)
  return { depthM, share: depthM / soil.depthM, mm: depthM * MM_PER_M }
}
