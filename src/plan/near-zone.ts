import { distanceToSegmentM, pointInRing, type PlanPoint, type Ring } from '#core/geometry'
import type { ZoneFacts } from '#core/zones'
import type { Obstacle } from './plan.schema'

/** A tree this near to a house may reach it with its roots or fall on it [m]; own judgement. */
const TREE_REACH_M = 8
/** Digging this near to a pipe or cable may hit it [m]; own judgement, lines are seldom where the drawing has them. */
const DIGGING_REACH_M = 2

/** Whether a house stands within a tree's reach of the zone. */
export function houseNear(zone: ZoneFacts, obstacles: readonly Obstacle[]): boolean {
  return obstacles.some(({ kind, ring }) => kind === 'house' && isNear(ring, zone.ring, TREE_REACH_M))
}

/** Whether pipes, cables or drains lie in the zone or beside it. */
export function servicesNear(zone: ZoneFacts, obstacles: readonly Obstacle[]): boolean {
  return obstacles.some(
    ({ kind, ring }) => (kind === 'services' || kind === 'drain') && isNear(ring, zone.ring, DIGGING_REACH_M),
  )
}

function isNear(shape: readonly PlanPoint[], ring: Ring, reachM: number): boolean {
  return (
    shape.some((point) => pointInRing(point, ring) || distanceToSidesM(point, ring) <= reachM) ||
    ring.some((corner) => distanceToSidesM(corner, shape) <= reachM)
  )
}

function distanceToSidesM(point: PlanPoint, shape: readonly PlanPoint[]): number {
  return Math.min(
    ...shape.map((from, index) => distanceToSegmentM(point, from, shape[(index + 1) % shape.length] ?? from)),
  )
}
