import { lineDistanceM, pointInRing, type Ring } from '#core/geometry'
import type { ZoneFacts } from '#core/zones'
import type { Obstacle } from './plan-survey.schema'

/** A tree this near to a house may reach it with its roots or fall on it [m]; own judgement. */
const TREE_REACH_M = 8
/** Digging this near to a pipe or cable may hit it [m]; own judgement, lines are seldom where the drawing has them. */
const DIGGING_REACH_M = 2

/** Whether a house or another building stands within a tree's reach of the zone. */
export function houseNear(zone: ZoneFacts, obstacles: readonly Obstacle[]): boolean {
  return obstacles.some(
    (obstacle) =>
      (obstacle.kind === 'house' || obstacle.kind === 'building') &&
      isNear(obstacle, zone.ring, TREE_REACH_M),
  )
}

/** Whether pipes, cables or drains lie in the zone or beside it. */
export function servicesNear(zone: ZoneFacts, obstacles: readonly Obstacle[]): boolean {
  return obstacles.some(
    (obstacle) =>
      (obstacle.kind === 'services' || obstacle.kind === 'drain') &&
      isNear(obstacle, zone.ring, DIGGING_REACH_M),
  )
}

/** Things that are outlined; all others are lines or single points. */
const outlined: readonly Obstacle['kind'][] = ['house', 'building', 'paving']

function isNear({ kind, ring }: Obstacle, zone: Ring, reachM: number): boolean {
  const shape = outlined.includes(kind) ? closed(ring) : ring
  return ring.some((point) => pointInRing(point, zone)) || lineDistanceM(shape, closed(zone)) <= reachM
}

function closed(ring: Ring): Ring {
  return [...ring, ...ring.slice(0, 1)]
}
