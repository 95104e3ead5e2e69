import { toRadians } from '#core/units'
import { poreSizeIndex, type SoilProperties } from '#core/soil'

/** Hours in a day [h/d]. */
const HOURS_PER_DAY = 24

/**
 * Slow creep of water down a slope through soil that is not full: gravity draws it along at the
 * conductivity of its wetness. Next to nothing in dry sand, yet never nothing.
 *
 * @param soil - the soil
 * @param depthM - depth that roots draw on [m], above 0
 * @param lie - how the ground lies
 * @param lie.slopeDeg - angle from horizontal [°], 0 to below 90
 * @param lie.lengthM - length down the slope [m plan], above 0
 * @returns a function from fullness of the water for plants, 0 to 1 [ratio], to creep [mm/d]
 * @throws RangeError when the depth or the lie is outside its range
 * @see Darcy's law with the conductivity of Saxton & Rawls 2006, Soil Sci. Soc. Am. J. 70:1569-1578, eq. 17
 */
export function seepageByFullness(
  soil: SoilProperties,
  depthM: number,
  lie: { readonly slopeDeg: number; readonly lengthM: number },
): (fullness: number) => number {
  const { slopeDeg, lengthM } = lie
  if (!(depthM > 0 && lengthM > 0 && slopeDeg >= 0 && slopeDeg < 90))
    throw new RangeError(`seepageByFullness: outside range, got ${depthM} m, ${lengthM} m, ${slopeDeg}°`)
  const { wiltingPoint, fieldCapacity, saturation, conductivityMmPerH } = soil
  const angle = toRadians(slopeDeg)
  // Flow across the soil's thickness, spread over the plan length it comes from.
  const whenFullMmPerDay =
    (HOURS_PER_DAY * conductivityMmPerH * Math.sin(angle) * Math.cos(angle) * depthM) / lengthM
  const power = 3 + 2 / poreSizeIndex(fieldCapacity, wiltingPoint)
  return (fullness) => {
    const content = wiltingPoint + (fieldCapacity - wiltingPoint) * Math.min(1, fullness)
    return whenFullMmPerDay * (content / saturation) ** power
  }
}
