import { crossesItself, ringAreaM2, type Ring } from '#core/geometry'
import type { Outcome } from '#core/units'
import type { Plan } from '#plan'
import { gone, refused } from './refused'
import { changedAt, without, withSurvey } from './with-survey'

/** Smaller outlines hold no ground [m²]. */
const LEAST_M2 = 0.01

/** Why an outline cannot stand; undefined when it can. */
export function ringRefusal(name: string, ring: Ring): Outcome<never> | undefined {
  if (ring.length < 3)
    return refused(name, `An outline of ${ring.length} corners holds nothing.`, 'Give it at least three.')
  const crossing = crossesItself(ring)
  if (crossing)
    return refused(
      name,
      `The side from corner ${crossing[0] + 1} cuts the side from corner ${crossing[1] + 1}.`,
      'Put the corners in the order in which you would walk round it.',
    )
  return ringAreaM2(ring) < LEAST_M2
    ? refused(name, 'Its corners lie in one line.', 'Move one of them off the line.')
    : undefined
}

/** The plan with an outline of its own, or with the survey’s when undefined. */
export function setBoundary(plan: Plan, ring: Ring | undefined): Outcome<Plan> {
  if (!ring) return withSurvey(plan, { boundary: undefined })
  return ringRefusal('outline of the plot', ring) ?? withSurvey(plan, { boundary: [...ring] })
}

/** The plan with one more part that is no ground. */
export function addHole(plan: Plan, ring: Ring): Outcome<Plan> {
  return ringRefusal('hole', ring) ?? withSurvey(plan, { holes: [...(plan.survey.holes ?? []), [...ring]] })
}

/** The plan with a hole’s outline changed. */
export function setHole(plan: Plan, at: number, ring: Ring): Outcome<Plan> {
  const holes = plan.survey.holes ?? []
  if (!holes[at]) return gone(`hole ${at + 1}`)
  return ringRefusal(`hole ${at + 1}`, ring) ?? withSurvey(plan, { holes: changedAt(holes, at, [...ring]) })
}

/** The plan with a hole filled. */
export function removeHole(plan: Plan, at: number): Outcome<Plan> {
  const holes = plan.survey.holes ?? []
  return holes[at] ? withSurvey(plan, { holes: without(holes, at) }) : gone(`hole ${at + 1}`)
}
