import { distanceToSegmentM, type PlanPoint } from '#core/geometry'

/**
 * Leaves out points that a line can do without (after Douglas and Peucker). The same line in the other direction
 * keeps the same points.
 *
 * @param points - the line; a closed one ends where it starts
 * @param toleranceM - farthest that a point left out may lie from the line that is kept [m], 0 or more
 * @returns the points that are kept, both ends among them
 * @see Douglas & Peucker 1973, Cartographica 10(2): 112-122
 */
export function simplifyLine(points: readonly PlanPoint[], toleranceM: number): PlanPoint[] {
  if (points.length < 3) return [...points]
  const from = points[0]
  const to = points.at(-1)
  if (!from || !to) return [...points]
  const closed = from.eastM === to.eastM && from.northM === to.northM
  const [at, gapM] = farthest(points, (point) =>
    closed ? distanceM(point, from) : distanceToSegmentM(point, from, to),
  )
  if (!closed && gapM <= toleranceM) return [from, to]
  return [
    ...simplifyLine(points.slice(0, at + 1), toleranceM).slice(0, -1),
    ...simplifyLine(points.slice(at), toleranceM),
  ]
}

// Index of the point, ends left out, for which the measure is greatest, and the measure.
function farthest(points: readonly PlanPoint[], measure: (point: PlanPoint) => number): [number, number] {
  let best: [number, number] = [1, -1]
  points.slice(1, -1).forEach((point, index) => {
    const value = measure(point)
    if (value > best[1]) best = [index + 1, value]
  })
  return best
}

const distanceM = (one: PlanPoint, other: PlanPoint) =>
  Math.hypot(one.eastM - other.eastM, one.northM - other.northM)
