import type { PlanPoint, Ring } from './geometry.types'

/**
 * Plan area of an outline by the shoelace formula, with the sense of turning as its sign.
 *
 * @param ring - outline in plan [m], first corner not repeated
 * @returns plan area [m²]: positive when the corners run anticlockwise, negative when clockwise
 */
export function signedAreaM2(ring: Ring): number {
  const origin = ring[0]
  if (!origin) return 0
  let doubled = 0
  for (const [from, to] of sides(ring))
    doubled +=
      (from.eastM - origin.eastM) * (to.northM - origin.northM) -
      (to.eastM - origin.eastM) * (from.northM - origin.northM)
  return doubled / 2
}

/**
 * Plan area of an outline.
 *
 * @param ring - outline in plan [m], in either sense of turning
 * @returns plan area [m²], 0 or more
 */
export function ringAreaM2(ring: Ring): number {
  return Math.abs(signedAreaM2(ring))
}

/**
 * Length once around an outline.
 *
 * @param ring - outline in plan [m]
 * @returns length of all its sides [m plan]
 */
export function perimeterM(ring: Ring): number {
  let totalM = 0
  for (const [from, to] of sides(ring)) totalM += Math.hypot(to.eastM - from.eastM, to.northM - from.northM)
  return totalM
}

/**
 * Centre of gravity of an outline's area; of its corners when it holds no area.
 *
 * @param ring - outline in plan [m], at least one corner
 * @returns the centre [m]; on a bent outline it can lie outside
 * @throws RangeError when the outline has no corner
 */
export function centroid(ring: Ring): PlanPoint {
  const origin = ring[0]
  if (!origin) throw new RangeError('centroid: the outline needs 1 corner or more, got 0')
  let [doubled, east, north] = [0, 0, 0]
  for (const [from, to] of sides(ring)) {
    const [x0, y0] = [from.eastM - origin.eastM, from.northM - origin.northM]
    const [x1, y1] = [to.eastM - origin.eastM, to.northM - origin.northM]
    const cross = x0 * y1 - x1 * y0
    doubled += cross
    east += (x0 + x1) * cross
    north += (y0 + y1) * cross
  }
  if (doubled === 0) return meanCorner(ring)
  return { eastM: origin.eastM + east / (3 * doubled), northM: origin.northM + north / (3 * doubled) }
}

/**
 * Every side of an outline, the closing one included.
 *
 * @param ring - outline in plan [m]
 * @returns pairs of corners, first side first
 */
export function sides(ring: Ring): [PlanPoint, PlanPoint][] {
  return ring.map((from, at) => [from, ring[(at + 1) % ring.length] ?? from])
}

function meanCorner(ring: Ring): PlanPoint {
  const sum = ring.reduce((so, corner) => ({
    eastM: so.eastM + corner.eastM,
    northM: so.northM + corner.northM,
  }))
  return { eastM: sum.eastM / ring.length, northM: sum.northM / ring.length }
}
