import type { PlanPoint } from '#core/geometry'
import type { Outcome } from '#core/units'
import type { Plan, Viewpoint } from '#plan'
import { gone } from './refused'
import { changedAt, freeId, without, withSurvey } from './with-survey'

/** What one looks from, with the usual height of the eye above the ground there [m]; own judgement. */
export const viewpointKinds: readonly {
  readonly id: Viewpoint['kind']
  readonly text: string
  readonly eyeM: number
}[] = [
  { id: 'window', text: 'window', eyeM: 1.5 },
  { id: 'door', text: 'door', eyeM: 1.6 },
  { id: 'seat', text: 'seat', eyeM: 1.2 },
]

/** The plan with one more place to look from. */
export function addViewpoint(
  plan: Plan,
  kind: Viewpoint['kind'],
  { eastM, northM }: PlanPoint,
): Outcome<Plan> {
  const viewpoints = plan.survey.viewpoints ?? []
  const number = viewpoints.filter((each) => each.kind === kind).length + 1
  const { text, eyeM } = viewpointKinds.find(({ id }) => id === kind) ?? { text: kind, eyeM: 1.6 }
  const name = `${text.charAt(0).toUpperCase()}${text.slice(1)}${number > 1 ? ` ${number}` : ''}`
  const viewpoint = { id: freeId(viewpoints, kind), name, kind, at: { eastM, northM }, eyeM }
  return withSurvey(plan, { viewpoints: [...viewpoints, viewpoint] })
}

/** The plan with a viewpoint changed. */
export function setViewpoint(plan: Plan, id: string, change: Partial<Viewpoint>): Outcome<Plan> {
  const viewpoints = plan.survey.viewpoints ?? []
  const at = viewpoints.findIndex((each) => each.id === id)
  const before = viewpoints[at]
  if (!before) return gone('viewpoint')
  return withSurvey(plan, { viewpoints: changedAt(viewpoints, at, { ...before, ...change }) })
}

/** The plan without a viewpoint. */
export function removeViewpoint(plan: Plan, id: string): Outcome<Plan> {
  const viewpoints = plan.survey.viewpoints ?? []
  const at = viewpoints.findIndex((each) => each.id === id)
  return at === -1 ? gone('viewpoint') : withSurvey(plan, { viewpoints: without(viewpoints, at) })
}
