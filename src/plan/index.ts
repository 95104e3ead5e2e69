export { planSchema, type Brief, type Choice, type Obstacle, type Plan } from './plan.schema'
export { openPlan, savePlan } from './open'
export { problemsOf } from './problems'
export type { Findings, Settlement, ZoneFindings } from './findings.types'
