import type { Plan } from './plan.schema'

/** The plan without what deriving never reads and what may be megabytes long: the picture under the plan. */
export function toDerive(plan: Plan): Plan {
  if (!plan.survey.backdrop) return plan
  const survey = { ...plan.survey }
  delete survey.backdrop
  return { ...plan, survey }
}
