import { distanceToSegmentM, pointInRing, ringAreaM2, type PlanPoint } from '#core/geometry'
import type { Placed } from './subject.types'

/**
 * What was meant by a touch on the plan: the nearest thing within reach, else the smallest outline around it.
 *
 * @param all - what can be picked
 * @param at - the place touched [m]
 * @param reachM - how near is near enough [m]
 * @returns the thing; undefined when none is meant
 */
export function pickPlaced(all: readonly Placed[], at: PlanPoint, reachM: number): Placed | undefined {
  let best: Placed | undefined
  let leastM = reachM
  for (const placed of all) {
    const awayM = awayFromM(placed, at)
    if (awayM <= leastM) [best, leastM] = [placed, awayM]
  }
  return best ?? smallestAround(all, at)
}

/**
 * The place nearest to another within reach, for snapping.
 *
 * @param places - where one may snap to [m]
 * @param at - the place touched [m]
 * @param reachM - how near is near enough [m]
 * @returns the place to take, the touched one itself when none is near
 */
export function snapped(places: readonly PlanPoint[], at: PlanPoint, reachM: number): PlanPoint {
  let [best, leastM] = [at, reachM]
  for (const { eastM, northM } of places) {
    const awayM = Math.hypot(eastM - at.eastM, northM - at.northM)
    if (awayM <= leastM) [best, leastM] = [{ eastM, northM }, awayM]
  }
  return best
}

function awayFromM({ ring, closed }: Placed, at: PlanPoint): number {
  const [first] = ring
  if (!first) return Infinity
  const line = closed ? [...ring, first] : ring
  if (line.length === 1) return distanceToSegmentM(at, first, first)
  return line.reduce(
    (least, to, index) => Math.min(least, distanceToSegmentM(at, line[index - 1] ?? to, to)),
    Infinity,
  )
}

function smallestAround(all: readonly Placed[], at: PlanPoint): Placed | undefined {
  return all
    .filter(({ ring, closed }) => closed && ring.length > 2 && pointInRing(at, ring))
    .sort((one, other) => ringAreaM2(one.ring) - ringAreaM2(other.ring))[0]
}
