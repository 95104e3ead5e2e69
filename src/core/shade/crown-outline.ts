import { centroid, type PlanPoint, type Ring } from '#core/geometry'

/** Corners that an outline has at least [count]. */
const LEAST_CORNERS = 3

/**
 * Middle of a tree: where it was drawn, or the middle of its outline.
 *
 * @param ring - the point, or the outline of its crown [m]
 * @returns its middle in plan [m]
 * @throws RangeError when there is no point
 */
export function crownMiddle(ring: Ring): PlanPoint {
  const [first] = ring
  if (first === undefined) throw new RangeError('crownMiddle: a tree must have 1 point or more, got 0')
  return ring.length < LEAST_CORNERS ? first : centroid(ring)
}

/**
 * Width of a crown that was drawn as an outline: twice the mean distance of its corners from its middle.
 *
 * @param ring - the point, or the outline of its crown [m]
 * @returns width [m]; undefined of a point or a line
 */
export function outlineWidthM(ring: Ring): number | undefined {
  if (ring.length < LEAST_CORNERS) return undefined
  const { eastM, northM } = crownMiddle(ring)
  const radii = ring.map((corner) => Math.hypot(corner.eastM - eastM, corner.northM - northM))
  return (2 * radii.reduce((sum, radius) => sum + radius, 0)) / radii.length
}
