import type { LevelPoint } from './geometry.types'

/**
 * Triangles with all their corners anticlockwise.
 *
 * @param points - the points
 * @param triangles - three indices into the points for each triangle [count]
 * @returns the same triangles; those that ran clockwise are turned
 */
export function anticlockwise(points: readonly LevelPoint[], triangles: ArrayLike<number>): Uint32Array {
  const corners = Uint32Array.from(triangles)
  for (let at = 0; at < corners.length; at += 3) {
    const [one, two, three] = [corners[at] ?? 0, corners[at + 1] ?? 0, corners[at + 2] ?? 0]
    const [a, b, c] = [points[one], points[two], points[three]]
    if (!a || !b || !c) continue
    const doubled = (b.eastM - a.eastM) * (c.northM - a.northM) - (c.eastM - a.eastM) * (b.northM - a.northM)
    if (doubled < 0) {
      corners[at + 1] = three
      corners[at + 2] = two
    }
  }
  return corners
}
