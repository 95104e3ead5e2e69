import { distanceToSegmentM } from './distance-to-segment'
import type { PlanPoint } from './geometry.types'

/**
 * Least distance between two lines of points.
 *
 * @param one - corners in order, at least one; close a ring by repeating its first corner
 * @param other - likewise
 * @returns distance [m], 0 where they touch or cross
 * @throws RangeError when a line has no corner
 */
export function lineDistanceM(one: readonly PlanPoint[], other: readonly PlanPoint[]): number {
  if (one.length === 0 || other.length === 0)
    throw new RangeError(`lineDistanceM: lines must have corners, got ${one.length} and ${other.length}`)
  const near = Infinity
  return segmentsOf(one).reduce(
    (least, first) =>
      segmentsOf(other).reduce((sofar, second) => Math.min(sofar, segmentDistanceM(first, second)), least),
    near,
  )
}

type Segment = readonly [PlanPoint, PlanPoint]

// A lone point is a segment of no length.
function segmentsOf(line: readonly PlanPoint[]): Segment[] {
  const [only] = line
  if (only && line.length === 1) return [[only, only]]
  return line.flatMap((to, at): Segment[] => {
    const from = line[at - 1]
    return from ? [[from, to]] : []
  })
}

function segmentDistanceM([from, to]: Segment, [start, end]: Segment): number {
  if (cross([from, to], [start, end])) return 0
  return Math.min(
    distanceToSegmentM(from, start, end),
    distanceToSegmentM(to, start, end),
    distanceToSegmentM(start, from, to),
    distanceToSegmentM(end, from, to),
  )
}

function cross([from, to]: Segment, [start, end]: Segment): boolean {
  return side(from, to, start) * side(from, to, end) < 0 && side(start, end, from) * side(start, end, to) < 0
}

// Above 0 where the point lies to the left of the segment.
function side(from: PlanPoint, to: PlanPoint, point: PlanPoint): number {
  return (
    (to.eastM - from.eastM) * (point.northM - from.northM) -
    (to.northM - from.northM) * (point.eastM - from.eastM)
  )
}
