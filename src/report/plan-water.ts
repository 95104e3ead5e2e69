import { pointInRing, type PlanPoint, type Ring } from '#core/geometry'
import { toDegrees, wholeCircleDeg } from '#core/units'
import type { Findings } from '#plan'
import type { PlanWater, WaterGoing } from './section-view.types'

/** Smaller shares of the plot's water are not marked where they leave [ratio]. */
const LEAST_SHARE = 0.05

/** How far to step off the boundary to tell inside from outside [m]. */
const STEP_M = 0.05

/** Hollows, and where the plot's water leaves it. */
export function planWater({ surface, around }: Findings): PlanWater {
  return {
    hollows: around.hollows.map(({ ring }) => ring),
    leaving: around.leaving
      .filter(({ share }) => share >= LEAST_SHARE)
      .map(({ at, line, share }): WaterGoing => ({
        at,
        share,
        towardsDeg: outwardDeg(at, line, surface.boundary),
      })),
  }
}

// Square to the piece of the stretch nearest to the place, away from the plot.
function outwardDeg(at: PlanPoint, line: readonly PlanPoint[], boundary: Ring): number {
  const [from, to] = [line[0] ?? at, line.at(-1) ?? at]
  const alongDeg = toDegrees(Math.atan2(to.eastM - from.eastM, to.northM - from.northM))
  const aside = (bearingDeg: number): PlanPoint => ({
    eastM: at.eastM + STEP_M * Math.sin((bearingDeg * Math.PI) / 180),
    northM: at.northM + STEP_M * Math.cos((bearingDeg * Math.PI) / 180),
  })
  const rightDeg = wholeCircleDeg(alongDeg + 90)
  return pointInRing(aside(rightDeg), boundary) ? wholeCircleDeg(alongDeg - 90) : rightDeg
}
