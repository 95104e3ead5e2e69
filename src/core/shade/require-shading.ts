import { withinRange } from '#core/sun'
import type { Crown, FarPoint, Screen, Shading, Standing } from './shade.types'

/** Farthest that a thing may stand from the plan's origin, and its highest level [m]: anything on earth. */
const MOST_M = 1e6
/** Least radius of a crown [m]. */
const LEAST_RADIUS_M = 0.01
/** Highest far hills [°]: nothing far away stands straight up. */
const MOST_FAR_DEG = 89.9

/**
 * Refuses things and far hills that cannot be.
 *
 * @param shading - what is said to take the sun away
 * @throws RangeError when a place is not finite, a crown has no width, a share is not from 0 to 1 or hills are not below 90°
 */
export function requireShading(shading: Shading): void {
  for (const thing of shading.standing) requireThing(thing)
  for (const point of shading.far) requireFar(point)
}

function requireThing({ id, through, screens, crowns }: Standing): void {
  for (const share of through) withinRange(`shade: light through ${id} [1]`, share, 0, 1)
  for (const screen of screens) requireScreen(id, screen)
  for (const crown of crowns) requireCrown(id, crown)
}

function requireScreen(id: string, { from, to, topFromM, topToM }: Screen): void {
  for (const value of [from.eastM, from.northM, to.eastM, to.northM, topFromM, topToM])
    withinRange(`shade: place of ${id} [m]`, value, -MOST_M, MOST_M)
}

function requireCrown(id: string, { at, radiusM, baseM, topM }: Crown): void {
  for (const value of [at.eastM, at.northM, baseM])
    withinRange(`shade: place of ${id} [m]`, value, -MOST_M, MOST_M)
  withinRange(`shade: top of the crown of ${id} [m]`, topM, baseM, MOST_M)
  withinRange(`shade: radius of the crown of ${id} [m]`, radiusM, LEAST_RADIUS_M, MOST_M)
}

function requireFar({ azimuthDeg, angleDeg }: FarPoint): void {
  withinRange('shade: direction of far hills [°]', azimuthDeg, 0, 360)
  withinRange('shade: height of far hills [°]', angleDeg, 0, MOST_FAR_DEG)
}
