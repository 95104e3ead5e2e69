import { distanceToSegmentM } from './distance-to-segment'
import type { PlanPoint, Ring } from './geometry.types'

/**
 * An outline with fewer corners that strays no more than a tolerance from the first.
 *
 * @param ring - outline in plan [m]
 * @param toleranceM - how far a dropped corner may lie from the new outline [m], 0 or more
 * @returns the simpler outline; never fewer than three corners when the first has three
 * @throws RangeError when the tolerance is negative
 * @see Douglas and Peucker 1973, Cartographica 10: 112-122
 */
export function simplifyRing(ring: Ring, toleranceM: number): Ring {
  if (!(toleranceM >= 0))
    throw new RangeError(`simplifyRing: toleranceM must be 0 or more, got ${toleranceM}`)
  const first = ring[0]
  if (!first || ring.length <= 3) return ring
  const far = farthest(ring, (corner) => Math.hypot(corner.eastM - first.eastM, corner.northM - first.northM))
  const kept = [
    ...simplifyLine(ring.slice(0, far.at + 1), toleranceM).slice(0, -1),
    ...simplifyLine([...ring.slice(far.at), first], toleranceM).slice(0, -1),
  ]
  return kept.length > 2 ? kept : threeCorners(ring, first, far.at)
}

function simplifyLine(line: readonly PlanPoint[], toleranceM: number): PlanPoint[] {
  const [from, to] = [line[0], line[line.length - 1]]
  if (!from || !to || line.length < 3) return [...line]
  const far = farthest(line, (point) => distanceToSegmentM(point, from, to))
  if (far.distanceM <= toleranceM) return [from, to]
  return [
    ...simplifyLine(line.slice(0, far.at + 1), toleranceM).slice(0, -1),
    ...simplifyLine(line.slice(far.at), toleranceM),
  ]
}

// The least outline that still holds area: its two far corners and the corner farthest from their line.
function threeCorners(ring: Ring, first: PlanPoint, at: number): Ring {
  const opposite = ring[at] ?? first
  const third = farthest(ring, (corner) => distanceToSegmentM(corner, first, opposite)).at
  return [0, at, third].sort((one, other) => one - other).flatMap((index) => ring[index] ?? [])
}

function farthest(points: readonly PlanPoint[], distanceOf: (point: PlanPoint) => number) {
  return points.reduce(
    (so, point, at) => {
      const distanceM = distanceOf(point)
      return distanceM > so.distanceM ? { at, distanceM } : so
    },
    { at: 0, distanceM: -1 },
  )
}
