import type { LinePiece, Tin } from '#core/geometry'

/** Every edge of a triangulation once, as `lower-higher`, with how many triangles have it. */
export function edgesOf({ corners }: Tin): Map<string, number> {
  const edges = new Map<string, number>()
  for (let at = 0; at < corners.length; at++) {
    const key = edgeKey(corners[at]!, corners[at % 3 === 2 ? at - 2 : at + 1]!)
    edges.set(key, (edges.get(key) ?? 0) + 1)
  }
  return edges
}

/** Name of an edge, whichever way it runs. */
export function edgeKey(one: number, other: number): string {
  return one < other ? `${one}-${other}` : `${other}-${one}`
}

/** Plan area of all triangles [m²]; clockwise ones count below 0. */
export function tinAreaM2({ corners, points }: Tin): number {
  let doubled = 0
  for (let at = 0; at < corners.length; at += 3) {
    const [a, b, c] = [points[corners[at]!]!, points[corners[at + 1]!]!, points[corners[at + 2]!]!]
    doubled += (b.eastM - a.eastM) * (c.northM - a.northM) - (c.eastM - a.eastM) * (b.northM - a.northM)
  }
  return doubled / 2
}

/** Edges, held by no piece of line, across which a triangle's circle holds the far corner of its neighbour. */
export function edgesAgainstDelaunay(tin: Tin, pieces: readonly LinePiece[]): string[] {
  const { corners, points } = tin
  const held = new Set(pieces.map(({ from, to }) => edgeKey(from, to)))
  const across = new Map<string, number[]>()
  for (let at = 0; at < corners.length; at++) {
    const key = edgeKey(corners[at]!, corners[at % 3 === 2 ? at - 2 : at + 1]!)
    across.set(key, [...(across.get(key) ?? []), at])
  }
  return [...across].flatMap(([key, [one, other]]) => {
    if (one === undefined || other === undefined || held.has(key)) return []
    const triangle = Math.floor(one / 3) * 3
    const far = corners[Math.floor(other / 3) * 3 + ((other + 2) % 3)]!
    const circle = [0, 1, 2].map((at) => points[corners[triangle + at]!]!)
    return inCircle(circle, points[far]!) > 1e-7 ? [key] : []
  })
}

interface Place {
  readonly eastM: number
  readonly northM: number
}

// Above 0 inside the circle through three places that run anticlockwise; scaled to lengths.
function inCircle(circle: readonly Place[], far: Place): number {
  const [a, b, c] = circle.map(({ eastM, northM }) => {
    const [x, y] = [eastM - far.eastM, northM - far.northM]
    return [x, y, x * x + y * y] as const
  })
  const sum =
    a![0] * (b![1] * c![2] - b![2] * c![1]) -
    a![1] * (b![0] * c![2] - b![2] * c![0]) +
    a![2] * (b![0] * c![1] - b![1] * c![0])
  return sum / Math.max(1, a![2], b![2], c![2]) ** 2
}
