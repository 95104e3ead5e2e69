import type { PlanPoint } from './geometry.types'

/**
 * Finds places that are the same within a tolerance; a chain of near places counts as one.
 *
 * @param points - places in plan [m]
 * @param toleranceM - how far apart places still are the same [m], more than 0
 * @returns for each place the index of the first of its group [count]
 * @throws RangeError when the tolerance is not above 0
 */
export function samePlaces(points: readonly PlanPoint[], toleranceM: number): Int32Array {
  if (!(toleranceM > 0)) throw new RangeError(`samePlaces: toleranceM must be above 0, got ${toleranceM}`)
  const group = Int32Array.from(points, (_, at) => at)
  const buckets = new Map<number, number[]>()
  points.forEach((point, at) => {
    const [east, north] = [Math.floor(point.eastM / toleranceM), Math.floor(point.northM / toleranceM)]
    let exact = false
    for (let beside = -1; beside <= 1; beside++)
      for (let above = -1; above <= 1; above++) {
        const bucket = buckets.get(keyOf(east + beside, north + above))
        if (bucket === undefined) continue
        for (const other of bucket) {
          const gapM = distanceM(point, points[other]!)
          if (gapM <= toleranceM) join(group, at, other)
          exact ||= gapM === 0
        }
      }
    if (exact) return
    const own = keyOf(east, north)
    const bucket = buckets.get(own)
    if (bucket) bucket.push(at)
    else buckets.set(own, [at])
  })
  return group.map((_, at) => firstOf(group, at))
}

// Far squares may share a key; distances are looked at anyway.
function keyOf(east: number, north: number): number {
  return Math.imul(east | 0, 73_856_093) ^ Math.imul(north | 0, 19_349_663)
}

function distanceM(one: PlanPoint, other: PlanPoint): number {
  return Math.hypot(one.eastM - other.eastM, one.northM - other.northM)
}

function firstOf(group: Int32Array, at: number): number {
  let first = at
  while (group[first]! !== first) first = group[first]!
  return first
}

function join(group: Int32Array, one: number, other: number): void {
  const [first, second] = [firstOf(group, one), firstOf(group, other)]
  group[Math.max(first, second)] = Math.min(first, second)
}
