import type { PlanPoint, Ring, Tin } from './geometry.types'

/**
 * The rims of a triangulation: the outer edge of each part, and the edges of its gaps.
 *
 * @param tin - the triangles, corners anticlockwise, none over another
 * @returns the rims [m]: outer ones anticlockwise, those of gaps clockwise, each joined by triangles that share a side; none when
 * triangles lie over one another
 */
export function tinRims(tin: Tin): Ring[] {
  const faces = facing(tin)
  if (!faces) return []
  const { points } = tin
  const count = points.length
  const rims: Ring[] = []
  const walked = new Set<number>()
  for (const key of faces.keys()) {
    if (walked.has(key) || faces.has(reversed(key, count))) continue
    const rim: PlanPoint[] = []
    for (let edge = key; !walked.has(edge); edge = nextOnRim(faces, edge, count)) {
      walked.add(edge)
      const { eastM, northM } = points[Math.floor(edge / count)]!
      rim.push({ eastM, northM })
    }
    rims.push(rim)
  }
  return rims
}

// The third corner of the triangle to the left of each directed edge; undefined when two triangles claim one edge.
function facing({ corners, points }: Tin): Map<number, number> | undefined {
  const faces = new Map<number, number>()
  for (let at = 0; at < corners.length; at++) {
    const first = at - (at % 3)
    const [from, to] = [corners[at]!, corners[first + ((at + 1) % 3)]!]
    const key = from * points.length + to
    if (faces.has(key)) return undefined
    faces.set(key, corners[first + ((at + 2) % 3)]!)
  }
  return faces
}

function reversed(key: number, count: number): number {
  return (key % count) * count + Math.floor(key / count)
}

// From the end of an edge of the rim round through its triangles to the next edge of the rim.
function nextOnRim(faces: ReadonlyMap<number, number>, edge: number, count: number): number {
  const corner = edge % count
  let next = corner * count + faces.get(edge)!
  for (
    let back = faces.get(reversed(next, count));
    back !== undefined;
    back = faces.get(reversed(next, count))
  )
    next = corner * count + back
  return next
}
