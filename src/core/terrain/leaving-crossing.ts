import { sides, type PlanPoint, type Ring } from '#core/geometry'
import type { Surface } from '#core/survey'

/** Where a straight step leaves the plot. */
export interface Crossing {
  readonly at: PlanPoint
  /** How much of the step lies before it, 0 to 1. */
  readonly share: number
  /** Over the boundary, or into a part of the plot that is no ground. */
  readonly over: 'boundary' | 'hole'
}

/** A step that begins on a side does not cross it [share of the step]: rounding. */
const ON_SIDE = 1e-9

/**
 * The first place where a straight step crosses the boundary or the edge of a hole.
 *
 * @param surface - the ground
 * @param from - start of the step [m]
 * @param to - its end [m]
 * @returns the crossing [m]; undefined when the step stays on the plot
 */
export function crossingOut(surface: Surface, from: PlanPoint, to: PlanPoint): Crossing | undefined {
  const boundary = firstCrossing(surface.boundary, from, to)
  let found: Crossing | undefined =
    boundary === undefined ? undefined : crossing(from, to, { share: boundary, over: 'boundary' })
  for (const hole of surface.holes) {
    const share = firstCrossing(hole, from, to)
    if (share !== undefined && share < (found?.share ?? Infinity))
      found = crossing(from, to, { share, over: 'hole' })
  }
  return found
}

function crossing(
  from: PlanPoint,
  to: PlanPoint,
  { share, over }: Pick<Crossing, 'share' | 'over'>,
): Crossing {
  const at = {
    eastM: from.eastM + share * (to.eastM - from.eastM),
    northM: from.northM + share * (to.northM - from.northM),
  }
  return { at, share, over }
}

// Share of the step before the first side it meets on its way.
function firstCrossing(ring: Ring, from: PlanPoint, to: PlanPoint): number | undefined {
  const [stepEast, stepNorth] = [to.eastM - from.eastM, to.northM - from.northM]
  let least: number | undefined
  for (const [start, end] of sides(ring)) {
    const [sideEast, sideNorth] = [end.eastM - start.eastM, end.northM - start.northM]
    const turn = stepEast * sideNorth - stepNorth * sideEast
    if (turn === 0) continue
    const [east, north] = [start.eastM - from.eastM, start.northM - from.northM]
    const share = (east * sideNorth - north * sideEast) / turn
    const along = (east * stepNorth - north * stepEast) / turn
    if (share > ON_SIDE && share <= 1 && along >= 0 && along <= 1) least = Math.min(least ?? 1, share)
  }
  return least
}
