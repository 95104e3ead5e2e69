import { signedAreaM2, type PlanPoint, type Ring } from '#core/geometry'

/** The place on the boundary nearest to a point. */
interface BoundaryPlace {
  readonly point: PlanPoint
  /** Distance of the point from the boundary [m]. */
  readonly gapM: number
  /** Corner of the boundary before the place, and part of the way to the next, 0 to 1. */
  readonly corner: number
  readonly part: number
}

/** The plot's outline as a line to walk along, anticlockwise. */
export interface BoundaryLine {
  readonly ring: Ring
  readonly nearest: (point: PlanPoint) => BoundaryPlace
  /** The way from one place on to another; all the way round when they are the same. */
  readonly path: (
    from: BoundaryPlace,
    to: BoundaryPlace,
  ) => { readonly points: PlanPoint[]; readonly lengthM: number }
}

/**
 * Makes the plot's outline walkable.
 *
 * @param boundary - the plot's outline, in either sense
 * @returns the outline as a line
 */
export function boundaryLine(boundary: Ring): BoundaryLine {
  // A boundary read from a survey may carry levels, which have no place in an outline.
  const plain = boundary.map(({ eastM, northM }) => ({ eastM, northM }))
  const ring = signedAreaM2(plain) < 0 ? plain.toReversed() : plain
  return {
    ring,
    nearest: (point) => nearestOn(ring, point),
    path: (from, to) => pathAlong(ring, from, to),
  }
}

function nearestOn(ring: Ring, point: PlanPoint): BoundaryPlace {
  let best: BoundaryPlace = { point, gapM: Infinity, corner: 0, part: 0 }
  ring.forEach((from, corner) => {
    const to = ring[(corner + 1) % ring.length] ?? from
    const eastM = to.eastM - from.eastM
    const northM = to.northM - from.northM
    const squared = eastM * eastM + northM * northM
    const along = (point.eastM - from.eastM) * eastM + (point.northM - from.northM) * northM
    const part = squared > 0 ? Math.min(1, Math.max(0, along / squared)) : 0
    const on = { eastM: from.eastM + part * eastM, northM: from.northM + part * northM }
    const gapM = distanceM(on, point)
    if (gapM < best.gapM) best = { point: on, gapM, corner, part }
  })
  return best
}

function pathAlong(ring: Ring, from: BoundaryPlace, to: BoundaryPlace) {
  const ahead = to.corner > from.corner || (to.corner === from.corner && to.part > from.part)
  const passed = to.corner - from.corner + (ahead ? 0 : ring.length)
  const corners = Array.from({ length: passed }, (_, step) => ring[(from.corner + 1 + step) % ring.length])
  const points = [from.point, ...corners.filter((corner) => corner !== undefined), to.point].filter(
    (point, index, all) => index === 0 || distanceM(point, all[index - 1] ?? point) > 0,
  )
  const lengthM = points.reduce((sum, point, index) => sum + distanceM(point, points[index - 1] ?? point), 0)
  return { points, lengthM }
}

const distanceM = (one: PlanPoint, other: PlanPoint) =>
  Math.hypot(one.eastM - other.eastM, one.northM - other.northM)
