import type { PlanPoint, Ring } from './geometry.types'
import { sides, signedAreaM2 } from './ring-measures'

/**
 * The part of an outline inside a window without hollows, such as a cell.
 *
 * A bent outline that leaves the window and comes back is returned as one outline with doubled sides along the
 * window's edge; its area is still exact.
 *
 * @param ring - outline in plan [m], in either sense of turning
 * @param window - convex outline in plan [m], in either sense of turning
 * @returns the common part; empty when there is none
 * @see Sutherland and Hodgman 1974, Communications of the ACM 17: 32-42
 */
export function clipRing(ring: Ring, window: Ring): Ring {
  const turn = signedAreaM2(window) < 0 ? -1 : 1
  let kept: Ring = ring
  for (const [from, to] of sides(window))
    kept = clipByLine(
      kept,
      (point) =>
        turn *
        ((to.eastM - from.eastM) * (point.northM - from.northM) -
          (to.northM - from.northM) * (point.eastM - from.eastM)),
    )
  return kept
}

// Keeps what lies where `leftOf` is 0 or more.
function clipByLine(ring: Ring, leftOf: (point: PlanPoint) => number): Ring {
  const kept: PlanPoint[] = []
  for (const [from, to] of sides(ring)) {
    const [here, next] = [leftOf(from), leftOf(to)]
    if (here >= 0) kept.push(from)
    if (here >= 0 !== next >= 0) kept.push(between(from, to, here / (here - next)))
  }
  return kept
}

function between(from: PlanPoint, to: PlanPoint, share: number): PlanPoint {
  return {
    eastM: from.eastM + share * (to.eastM - from.eastM),
    northM: from.northM + share * (to.northM - from.northM),
  }
}
