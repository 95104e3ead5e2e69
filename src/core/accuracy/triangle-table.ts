import type { Tin } from '#core/geometry'

/** The planes of all triangles as weights of their corners' levels. */
export interface TriangleTable {
  /** Places and levels of the points [m]. */
  readonly eastM: Float64Array
  readonly northM: Float64Array
  readonly levelM: Float64Array
  /** Points of each triangle, three to a triangle. */
  readonly corners: Uint32Array
  /** Weight of each corner's level in the two gradients of its triangle [1/m]; 0 where a triangle has no area. */
  readonly eastWeight: Float64Array
  readonly northWeight: Float64Array
}

/**
 * The planes of triangles, ready for any sum over them.
 *
 * @param tin - the triangles
 * @returns weights of the corners
 */
export function triangleTable(tin: Tin): TriangleTable {
  const { corners, points } = tin
  const eastM = Float64Array.from(points, (point) => point.eastM)
  const northM = Float64Array.from(points, (point) => point.northM)
  const eastWeight = new Float64Array(corners.length)
  const northWeight = new Float64Array(corners.length)
  for (let at = 0; at < corners.length; at += 3) {
    const [a, b, c] = [corners[at]!, corners[at + 1]!, corners[at + 2]!]
    const [bEast, bNorth] = [eastM[b]! - eastM[a]!, northM[b]! - northM[a]!]
    const [cEast, cNorth] = [eastM[c]! - eastM[a]!, northM[c]! - northM[a]!]
    const doubled = bEast * cNorth - cEast * bNorth
    if (doubled === 0) continue
    eastWeight.set([(bNorth - cNorth) / doubled, cNorth / doubled, -bNorth / doubled], at)
    northWeight.set([(cEast - bEast) / doubled, -cEast / doubled, bEast / doubled], at)
  }
  return {
    eastM,
    northM,
    levelM: Float64Array.from(points, (p) => p.levelM),
    corners,
    eastWeight,
    northWeight,
  }
}

/**
 * Weight of a corner in the level of its triangle's plane at a place.
 *
 * @param table - the planes
 * @param at - the corner's entry [count], three times its triangle's number and 0, 1 or 2
 * @param eastM - east of the place [m]
 * @param northM - north of the place [m]
 * @returns weight [1]; the three of a triangle add up to 1
 */
export function cornerWeight(table: TriangleTable, at: number, eastM: number, northM: number): number {
  // The plane that is 1 at this corner and 0 at the two others.
  const point = table.corners[at]!
  return (
    1 +
    table.eastWeight[at]! * (eastM - table.eastM[point]!) +
    table.northWeight[at]! * (northM - table.northM[point]!)
  )
}
