import type { PlanPoint, Ring } from './geometry.types'

/**
 * The tightest outline without hollows around some places (monotone chain).
 *
 * @param points - places in plan [m]
 * @returns its corners anticlockwise; fewer than three when the places lie in one line
 */
export function convexHull(points: readonly PlanPoint[]): Ring {
  const sorted = [...points].sort((one, other) => one.eastM - other.eastM || one.northM - other.northM)
  const first = sorted[0]
  const last = sorted[sorted.length - 1]
  if (!first || !last || (first.eastM === last.eastM && first.northM === last.northM))
    return first ? [first] : []
  return [...chain(sorted), ...chain(sorted.reverse())]
}

// One side of the hull, its last corner left to the other side.
function chain(sorted: readonly PlanPoint[]): PlanPoint[] {
  const kept: PlanPoint[] = []
  for (const point of sorted) {
    while (kept.length > 1 && !turnsLeft(kept[kept.length - 2], kept[kept.length - 1], point)) kept.pop()
    kept.push(point)
  }
  kept.pop()
  return kept
}

function turnsLeft(from: PlanPoint | undefined, over: PlanPoint | undefined, to: PlanPoint): boolean {
  if (!from || !over) return true
  const cross =
    (over.eastM - from.eastM) * (to.northM - from.northM) -
    (over.northM - from.northM) * (to.eastM - from.eastM)
  return cross > 0
}
