import type { PlanPoint, Ring } from '#core/geometry'
import type { Plan } from '#plan'
import type { Placed } from './subject.types'

/**
 * Places that a new or moved one may snap to: every point that is on the plan already, but not those of what is
 * being moved.
 *
 * @param plan - the plan
 * @param boundary - outline of the plot as it is now [m]
 * @param moving - what is being moved
 */
export function snapPlaces(plan: Plan, boundary: Ring, moving: Placed | undefined): PlanPoint[] {
  const { ground, holes = [], obstacles, viewpoints = [], sections = [] } = plan.survey
  const levels = ground.kind === 'levels' ? ground.points : []
  const lines = ground.kind === 'levels' ? (ground.breaklines ?? []) : []
  const own = new Set((moving?.ring ?? []).map(keyOf))
  return [
    ...boundary,
    ...holes.flat(),
    ...levels,
    ...lines.flatMap(({ vertices }): PlanPoint[] => vertices),
    ...obstacles.flatMap(({ ring }) => ring),
    ...viewpoints.map(({ at }) => at),
    ...sections.flatMap(({ from, to }) => [from, to]),
  ].filter((place) => !own.has(keyOf(place)))
}

const keyOf = ({ eastM, northM }: PlanPoint): string => `${eastM} ${northM}`
