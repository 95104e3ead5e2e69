import { boxAround } from './grid-frame'
import { boxIndex, nearPiece } from './box-index'
import type { PlanPoint, Tin } from './geometry.types'
import { levelOnPlaneM, trianglePlane } from './tin-over-grid'

/** How far outside a triangle a place still counts as on its edge, as a share of the triangle. */
const EDGE_SHARE = 1e-9

/**
 * Reads levels from triangles at any place.
 *
 * @param tin - the triangles, corners anticlockwise
 * @returns a function from place to level [m], undefined where no triangle lies
 */
export function levelOnTin(tin: Tin): (place: PlanPoint) => number | undefined {
  const corner = (triangle: number, at: number) => tin.points[tin.corners[triangle * 3 + at]!]!
  const index = boxIndex(tin.corners.length / 3, (triangle) =>
    boxAround([corner(triangle, 0), corner(triangle, 1), corner(triangle, 2)]),
  )
  return (place) => {
    let found: number | undefined
    index.search(nearPiece(place, place, EDGE_SHARE), (triangle) => {
      if (found !== undefined) return
      const [a, b, c] = [corner(triangle, 0), corner(triangle, 1), corner(triangle, 2)]
      const doubled = doubledArea(a, b, c)
      const least = Math.min(doubledArea(place, b, c), doubledArea(place, c, a), doubledArea(place, a, b))
      if (doubled > 0 && least >= -EDGE_SHARE * doubled) found = triangle
    })
    const plane = found === undefined ? undefined : trianglePlane(tin, found)
    return plane && levelOnPlaneM(plane, place)
  }
}

function doubledArea(a: PlanPoint, b: PlanPoint, c: PlanPoint): number {
  return (b.eastM - a.eastM) * (c.northM - a.northM) - (c.eastM - a.eastM) * (b.northM - a.northM)
}
