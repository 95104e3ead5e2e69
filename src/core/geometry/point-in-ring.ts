import type { PlanPoint, Ring } from './geometry.types'

/**
 * Whether a place lies inside an outline, by counting the sides east of it.
 *
 * @param point - the place [m]
 * @param ring - outline in plan [m], in either sense of turning
 * @returns true inside; a place exactly on a side may count either way
 */
export function pointInRing(point: PlanPoint, ring: Ring): boolean {
  let inside = false
  let previous = ring[ring.length - 1]
  for (const corner of ring) {
    if (previous && passesEastOf(point, previous, corner)) inside = !inside
    previous = corner
  }
  return inside
}

function passesEastOf(point: PlanPoint, from: PlanPoint, to: PlanPoint): boolean {
  if (from.northM > point.northM === to.northM > point.northM) return false
  const share = (point.northM - from.northM) / (to.northM - from.northM)
  return point.eastM < from.eastM + share * (to.eastM - from.eastM)
}
