import { boxIndex, meetingBox } from './box-index'
import type { LevelPoint, PlanPoint, Tin } from './geometry.types'
import { boxAround } from './grid-frame'

/** Triangles that lie into each other by less than this only touch, to rounding [m]. */
const TOUCH_M = 1e-6

/**
 * Pairs of triangles that lie over the same ground.
 *
 * @param tin - the triangles, corners anticlockwise, each with area
 * @param most - how many pairs to look for [count], 1 or more
 * @returns numbers of the two triangles of each pair [count], lower first; no more than `most`
 */
export function triangleOverlaps(tin: Tin, most: number): [number, number][] {
  const count = tin.corners.length / 3
  const corners = (triangle: number) =>
    [0, 1, 2].map((at) => tin.points[tin.corners[triangle * 3 + at]!]!) as [
      LevelPoint,
      LevelPoint,
      LevelPoint,
    ]
  const index = boxIndex(count, (triangle) => boxAround(corners(triangle)))
  const pairs: [number, number][] = []
  for (let triangle = 0; triangle < count && pairs.length < most; triangle++) {
    const own = corners(triangle)
    index.search(meetingBox(boxAround(own)), (other) => {
      if (other > triangle && pairs.length < most && overlap(own, corners(other)))
        pairs.push([triangle, other])
    })
  }
  return pairs.sort((one, other) => one[0] - other[0] || one[1] - other[1])
}

type Corners = readonly [PlanPoint, PlanPoint, PlanPoint]

// Two triangles lie apart when one side of either has the whole of the other on its outer side.
function overlap(one: Corners, other: Corners): boolean {
  return !parts(one, other) && !parts(other, one)
}

function parts(triangle: Corners, other: Corners): boolean {
  return triangle.some((from, at) => {
    const to = triangle[(at + 1) % 3]!
    const [east, north] = [to.eastM - from.eastM, to.northM - from.northM]
    const reach = TOUCH_M * Math.hypot(east, north)
    return other.every(
      (corner) => east * (corner.northM - from.northM) - north * (corner.eastM - from.eastM) <= reach,
    )
  })
}
