import type { Tin } from './geometry.types'

/** Which points are joined to which by the edges of triangles. */
export interface TinNeighbours {
  /** Neighbours of a point, by their numbers. */
  readonly of: (point: number) => ArrayLike<number>
  /** 1 for each point on the outer edge of the triangles. */
  readonly onRim: Uint8Array
  /** Triangles that lie beyond those at a point: joined to them by a side, but without the point. */
  readonly beyond: (point: number) => (readonly [number, number, number])[]
}

/**
 * The neighbours of every point of a triangulation.
 *
 * @param tin - the triangles, corners anticlockwise
 * @returns the neighbours, and which points lie on the rim
 */
export function tinNeighbours(tin: Tin): TinNeighbours {
  const count = tin.points.length
  const edges = edgeKeys(tin)
  const start = new Uint32Array(count + 1)
  const onRim = new Uint8Array(count)
  const ends: number[] = []
  for (let at = 0; at < edges.length; at++) {
    const key = edges[at]!
    const [low, high] = [Math.floor(key / count), key % count]
    const twin = edges[at + 1] === key
    if (twin) at++
    else onRim[low] = onRim[high] = 1
    ends.push(low, high)
    start[low + 1]! += 1
    start[high + 1]! += 1
  }
  for (let point = 0; point < count; point++) start[point + 1]! += start[point]!
  const filled = start.slice()
  const list = new Uint32Array(ends.length)
  for (let at = 0; at < ends.length; at += 2) {
    list[filled[ends[at]!]!++] = ends[at + 1]!
    list[filled[ends[at + 1]!]!++] = ends[at]!
  }
  return {
    of: (point) => list.subarray(start[point], start[point + 1]),
    onRim,
    beyond: trianglesBeyond(tin),
  }
}

function trianglesBeyond({ corners, points }: Tin): TinNeighbours['beyond'] {
  const start = new Uint32Array(points.length + 1)
  const facing = new Map<number, number>()
  const next = (at: number) => corners[at % 3 === 2 ? at - 2 : at + 1]!
  const after = (at: number) => corners[at % 3 === 0 ? at + 2 : at - 1]!
  for (let at = 0; at < corners.length; at++) {
    start[corners[at]! + 1]! += 1
    facing.set(next(at) * points.length + after(at), corners[at]!)
  }
  for (let point = 0; point < points.length; point++) start[point + 1]! += start[point]!
  const filled = start.slice()
  const list = new Uint32Array(corners.length)
  for (let at = 0; at < corners.length; at++) list[filled[corners[at]!]!++] = at
  return (point) => {
    const found: (readonly [number, number, number])[] = []
    for (let held = start[point]!; held < start[point + 1]!; held++) {
      const [one, other] = [next(list[held]!), after(list[held]!)]
      const far = facing.get(other * points.length + one)
      if (far !== undefined) found.push([other, one, far])
    }
    return found
  }
}

// Every edge as one number, lower end first, sorted: edges of two triangles stand beside themselves.
function edgeKeys(tin: Tin): Float64Array {
  const { corners, points } = tin
  const keys = new Float64Array(corners.length)
  for (let at = 0; at < corners.length; at++) {
    const [one, other] = [corners[at]!, corners[at % 3 === 2 ? at - 2 : at + 1]!]
    keys[at] = Math.min(one, other) * points.length + Math.max(one, other)
  }
  return keys.sort()
}
