import type { PlanPoint } from '#core/geometry'
import type { Outcome } from '#core/units'
import type { Beyond, Plan } from '#plan'
import { gone, refused } from './refused'
import { changedAt, freeId, without, withSurvey } from './with-survey'

/** What may lie beyond the boundary. */
export const beyondKinds: readonly { readonly id: Beyond['what']; readonly text: string }[] = [
  { id: 'neighbour', text: 'neighbour’s garden' },
  { id: 'field', text: 'field' },
  { id: 'wood', text: 'wood' },
  { id: 'road', text: 'road' },
  { id: 'roof', text: 'roof' },
  { id: 'own-garden', text: 'more of your own garden' },
  { id: 'watercourse', text: 'stream or ditch' },
]

/** The plan with what lies beyond one more stretch of the boundary. */
export function addBeyond(plan: Plan, what: Beyond['what'], [from, to]: readonly PlanPoint[]): Outcome<Plan> {
  if (!from || !to)
    return refused('beyond the boundary', 'A stretch has two ends.', 'Set where it begins and where it ends.')
  const beyond = plan.survey.beyond ?? []
  const { text } = beyondKinds.find(({ id }) => id === what) ?? { text: what }
  const name = `${text.charAt(0).toUpperCase()}${text.slice(1)}`
  const stretch = { id: freeId(beyond, what), name, what, from, to }
  return sameEnds(stretch) ?? withSurvey(plan, { beyond: [...beyond, stretch] })
}

/** The plan with a stretch changed. */
export function setBeyond(plan: Plan, id: string, change: Partial<Beyond>): Outcome<Plan> {
  const beyond = plan.survey.beyond ?? []
  const at = beyond.findIndex((each) => each.id === id)
  const before = beyond[at]
  if (!before) return gone('stretch beyond the boundary')
  const stretch = { ...before, ...change }
  return sameEnds(stretch) ?? withSurvey(plan, { beyond: changedAt(beyond, at, stretch) })
}

/** The plan without a stretch. */
export function removeBeyond(plan: Plan, id: string): Outcome<Plan> {
  const beyond = plan.survey.beyond ?? []
  const at = beyond.findIndex((each) => each.id === id)
  return at === -1 ? gone('stretch beyond the boundary') : withSurvey(plan, { beyond: without(beyond, at) })
}

function sameEnds({ name, from, to }: Beyond): Outcome<never> | undefined {
  return from.eastM === to.eastM && from.northM === to.northM
    ? refused(name, 'It begins and ends in one place.', 'Set its end further along the boundary.')
    : undefined
}
