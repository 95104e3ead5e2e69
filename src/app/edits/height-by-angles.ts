import { toRadians } from '#core/units'

/** Steepest sight that gives a height one can trust [°]. */
export const STEEPEST_SIGHT_DEG = 75

/**
 * Height of a thing from where one stands, by two angles.
 *
 * @param awayM - level distance to it [m], above 0
 * @param topDeg - angle up to its top [°], down negative, -75 to 75
 * @param footDeg - angle to its foot [°], down negative, -75 to 75
 * @returns its height to the centimetre [m]; undefined when the top is not above the foot
 */
export function heightByAngles(awayM: number, topDeg: number, footDeg: number): number | undefined {
  const heightM = awayM * (Math.tan(toRadians(topDeg)) - Math.tan(toRadians(footDeg)))
  return heightM > 0 ? Math.round(heightM * 100) / 100 : undefined
}
