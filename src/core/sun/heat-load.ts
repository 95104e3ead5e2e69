import { bearingGapDeg, toRadians } from '#core/units'
import { withinRange } from './within-range'

/** Direction in which afternoon heat makes a slope of the northern hemisphere warmest [°] (McCune & Keon 2002). */
const WARMEST_NORTH_DEG = 225
/** The same in the southern hemisphere, mirrored [°] (the usual adaptation). */
const WARMEST_SOUTH_DEG = 315

/**
 * Heat load: potential direct radiation through a year with the warm side turned to the south-west (north-west in the
 * southern hemisphere), where the afternoon finds ground and air already warm.
 *
 * @param latitudeDeg - latitude [°], north positive, -60 to 60
 * @param slopeDeg - steepness [°], 0 to 90
 * @param aspectDeg - direction faced, clockwise from true north [°]; any on level ground
 * @returns heat load [MJ/cm² and year], some 0.03 to 1.1
 * @throws RangeError when a value is out of its range
 * @see McCune & Keon 2002, Journal of Vegetation Science 13:603-606, equation 1
 */
export function heatLoad(latitudeDeg: number, slopeDeg: number, aspectDeg: number): number {
  withinRange('heatLoad: latitude [°]', latitudeDeg, -60, 60)
  withinRange('heatLoad: slope [°]', slopeDeg, 0, 90)
  const warmest = latitudeDeg < 0 ? WARMEST_SOUTH_DEG : WARMEST_NORTH_DEG
  const latitude = toRadians(Math.abs(latitudeDeg))
  const slope = toRadians(slopeDeg)
  const folded = toRadians(180 - bearingGapDeg(aspectDeg, warmest))
  const tilted = Math.sin(slope)
  return Math.exp(
    -1.467 +
      1.582 * Math.cos(latitude) * Math.cos(slope) -
      1.5 * Math.cos(folded) * tilted * Math.sin(latitude) -
      0.262 * Math.sin(latitude) * tilted +
      0.607 * Math.sin(folded) * tilted,
  )
}
