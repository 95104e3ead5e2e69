import { pointInRing, sides, signedAreaM2, type PlanPoint, type Ring } from '#core/geometry'

/** Corners closer than this are the same corner [m]. */
const SAME_M = 0.005

/** A straight piece of an outline, the zone on its left. */
interface Piece {
  readonly from: PlanPoint
  readonly to: PlanPoint
}

/**
 * One outline about two that touch along a side or overlap.
 *
 * @param one - outline in plan [m]
 * @param other - outline in plan [m]
 * @returns the outer outlines and the rims of holes of what both cover together: one ring when they join neatly
 */
export function mergeRings(one: Ring, other: Ring): readonly Ring[] {
  const left = anticlockwise(one)
  const right = snapTo(anticlockwise(other), left)
  const leftPieces = piecesOf(left, right)
  const rightPieces = piecesOf(right, left)
  const kept = [
    ...leftPieces.filter((piece) => staysOutside(piece, right, rightPieces, true)),
    ...rightPieces.filter((piece) => staysOutside(piece, left, leftPieces, false)),
  ]
  return chained(kept).map(withoutStraightCorners)
}

const anticlockwise = (ring: Ring): Ring => (signedAreaM2(ring) < 0 ? ring.toReversed() : ring)

// Corners that all but coincide with corners of the other outline become the same.
function snapTo(ring: Ring, other: Ring): Ring {
  return ring.map((corner) => other.find((near) => same(corner, near)) ?? corner)
}

// The outline cut wherever the other one touches or crosses it.
function piecesOf(ring: Ring, other: Ring): Piece[] {
  return sides(ring).flatMap(([from, to]) => {
    const cuts = [
      ...other.filter((corner) => liesOn(corner, from, to)),
      ...sides(other).flatMap(([start, end]) => crossing(from, to, start, end)),
    ]
    const along = (point: PlanPoint) =>
      (point.eastM - from.eastM) * (to.eastM - from.eastM) +
      (point.northM - from.northM) * (to.northM - from.northM)
    const stops = [from, ...cuts.toSorted((a, b) => along(a) - along(b)), to].filter(
      (stop, index, all) => index === 0 || !same(stop, all[index - 1] ?? stop),
    )
    return stops.slice(1).map((stop, index) => ({ from: stops[index] ?? from, to: stop }))
  })
}

// A piece bounds both together unless the other outline covers it; of a shared piece one copy stays.
function staysOutside(piece: Piece, other: Ring, otherPieces: readonly Piece[], first: boolean): boolean {
  const twin = otherPieces.find((each) => same(each.from, piece.from) && same(each.to, piece.to))
  if (twin) return first
  if (otherPieces.some((each) => same(each.from, piece.to) && same(each.to, piece.from))) return false
  const middle = {
    eastM: (piece.from.eastM + piece.to.eastM) / 2,
    northM: (piece.from.northM + piece.to.northM) / 2,
  }
  return !pointInRing(middle, other)
}

// Joins pieces end to end into closed outlines.
function chained(pieces: readonly Piece[]): Ring[] {
  const waiting = [...pieces]
  const rings: Ring[] = []
  for (let piece = waiting.pop(); piece; piece = waiting.pop()) {
    const ring: PlanPoint[] = [piece.from]
    let end = piece.to
    while (!same(end, ring[0] ?? end)) {
      const next = waiting.findIndex(({ from }) => same(from, end))
      const found = next < 0 ? undefined : waiting.splice(next, 1)[0]
      if (!found) break
      ring.push(found.from)
      end = found.to
    }
    rings.push(ring)
  }
  return rings.filter((ring) => ring.length > 2)
}

// Leaves out corners that lie exactly on the line between their neighbours.
function withoutStraightCorners(ring: Ring): Ring {
  return ring.filter((corner, index) => {
    const before = ring.at(index - 1) ?? corner
    const after = ring[(index + 1) % ring.length] ?? corner
    return !(liesOn(corner, before, after) && Math.abs(turnM2(before, corner, after)) < STRAIGHT_M2)
  })
}

/** Twice the area of a triangle below which its corners count as one line [m²]. */
const STRAIGHT_M2 = 1e-9

const turnM2 = (a: PlanPoint, b: PlanPoint, c: PlanPoint) =>
  (b.eastM - a.eastM) * (c.northM - a.northM) - (b.northM - a.northM) * (c.eastM - a.eastM)

const same = (one: PlanPoint, other: PlanPoint) =>
  Math.hypot(one.eastM - other.eastM, one.northM - other.northM) < SAME_M

// True for a point on the piece of line, its two ends left out.
function liesOn(point: PlanPoint, from: PlanPoint, to: PlanPoint): boolean {
  if (same(point, from) || same(point, to)) return false
  const lengthM = Math.hypot(to.eastM - from.eastM, to.northM - from.northM)
  const along =
    ((point.eastM - from.eastM) * (to.eastM - from.eastM) +
      (point.northM - from.northM) * (to.northM - from.northM)) /
    lengthM
  return along > 0 && along < lengthM && Math.abs(turnM2(from, to, point)) / lengthM < SAME_M
}

// The place where two pieces of line truly cross, if they do.
function crossing(a: PlanPoint, b: PlanPoint, c: PlanPoint, d: PlanPoint): PlanPoint[] {
  const [ac, bc] = [turnM2(c, d, a), turnM2(c, d, b)]
  if (ac * bc >= 0 || turnM2(a, b, c) * turnM2(a, b, d) >= 0) return []
  const part = ac / (ac - bc)
  return [{ eastM: a.eastM + part * (b.eastM - a.eastM), northM: a.northM + part * (b.northM - a.northM) }]
}
