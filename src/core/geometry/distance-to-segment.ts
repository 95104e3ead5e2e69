import type { PlanPoint } from './geometry.types'

/**
 * Shortest plan distance from a place to a straight piece of line.
 *
 * @param point - the place [m]
 * @param from - one end [m]
 * @param to - the other end, may be the same [m]
 * @returns distance [m plan], 0 or more
 */
export function distanceToSegmentM(point: PlanPoint, from: PlanPoint, to: PlanPoint): number {
  const [east, north] = [to.eastM - from.eastM, to.northM - from.northM]
  const square = east * east + north * north
  const along =
    square === 0 ? 0 : ((point.eastM - from.eastM) * east + (point.northM - from.northM) * north) / square
  const nearest = Math.min(1, Math.max(0, along))
  return Math.hypot(point.eastM - from.eastM - nearest * east, point.northM - from.northM - nearest * north)
}
