import type { PlanPoint, Ring } from './geometry.types'
import { sides } from './ring-measures'

/** A piece of a line, as distances from its start [m]. */
export interface Span {
  readonly fromM: number
  readonly toM: number
}

/**
 * The pieces of an endless straight line that lie inside an outline.
 *
 * @param ring - outline in plan [m] that does not cross itself
 * @param start - place on the line where distances count from [m]
 * @param bearingDeg - direction of the line, clockwise from north [°]
 * @returns the pieces in order along the line; distances behind the start are negative [m plan]
 */
export function cutLine(ring: Ring, start: PlanPoint, bearingDeg: number): Span[] {
  const bearing = (bearingDeg * Math.PI) / 180
  const [east, north] = [Math.sin(bearing), Math.cos(bearing)]
  const side = (point: PlanPoint) =>
    east * (point.northM - start.northM) - north * (point.eastM - start.eastM)
  const along = (point: PlanPoint) =>
    east * (point.eastM - start.eastM) + north * (point.northM - start.northM)
  const crossings: number[] = []
  for (const [from, to] of sides(ring)) {
    const [here, there] = [side(from), side(to)]
    if (here >= 0 === there >= 0) continue
    crossings.push(along(from) + (here / (here - there)) * (along(to) - along(from)))
  }
  crossings.sort((one, other) => one - other)
  const spans: Span[] = []
  for (let pair = 0; pair + 1 < crossings.length; pair += 2)
    spans.push({ fromM: crossings[pair] ?? 0, toM: crossings[pair + 1] ?? 0 })
  return spans
}
