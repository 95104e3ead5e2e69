import type { PlanPoint, Ring } from './geometry.types'
import { sides } from './ring-measures'

/** A place on an outline. */
export interface OnRing {
  /** The place itself [m]. */
  readonly at: PlanPoint
  /** Which side of the outline it lies on; the first side, from corner 0 to corner 1, is 0. */
  readonly side: number
  /** How far along that side, 0 (its first corner) to 1. */
  readonly share: number
}

/**
 * The place on an outline that is nearest to another place.
 *
 * @param ring - outline in plan [m], at least one corner
 * @param place - any place [m]
 * @returns the nearest place on it [m]
 * @throws RangeError when the outline has no corner
 */
export function nearestOnRing(ring: Ring, place: PlanPoint): OnRing {
  let best: OnRing | undefined
  let leastM = Infinity
  for (const [side, [from, to]] of sides(ring).entries()) {
    const found = onSide(place, from, to)
    const awayM = Math.hypot(place.eastM - found.at.eastM, place.northM - found.at.northM)
    if (awayM < leastM) [best, leastM] = [{ ...found, side }, awayM]
  }
  if (!best) throw new RangeError(`nearestOnRing: ring must have a corner, got ${ring.length}`)
  return best
}

/**
 * The part of an outline between two places, going on in the order of its corners. It runs the whole way round when
 * both places are one.
 *
 * @param ring - outline in plan [m], at least one corner
 * @param from - where it begins; the nearest place on the outline counts [m]
 * @param to - where it ends, likewise [m]
 * @returns the line along the outline, ends included [m]
 * @throws RangeError when the outline has no corner
 */
export function ringStretch(ring: Ring, from: PlanPoint, to: PlanPoint): PlanPoint[] {
  const [start, end] = [nearestOnRing(ring, from), nearestOnRing(ring, to)]
  const onwards = end.side > start.side || (end.side === start.side && end.share > start.share)
  const steps = end.side - start.side + (onwards ? 0 : ring.length)
  const corners = Array.from({ length: steps }, (_, step) => ring[(start.side + 1 + step) % ring.length])
  const line = [start.at, ...corners.filter((corner) => corner !== undefined), end.at]
  return line.filter((place, at) => at === 0 || !samePlace(place, line[at - 1]))
}

function onSide(place: PlanPoint, from: PlanPoint, to: PlanPoint): Omit<OnRing, 'side'> {
  const [east, north] = [to.eastM - from.eastM, to.northM - from.northM]
  const square = east * east + north * north
  const along =
    square === 0 ? 0 : ((place.eastM - from.eastM) * east + (place.northM - from.northM) * north) / square
  const share = Math.min(1, Math.max(0, along))
  return { at: { eastM: from.eastM + share * east, northM: from.northM + share * north }, share }
}

const samePlace = (one: PlanPoint, other: PlanPoint | undefined): boolean =>
  other !== undefined && one.eastM === other.eastM && one.northM === other.northM
