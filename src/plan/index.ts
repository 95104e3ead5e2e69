export { planSchema, type Brief, type Choice, type Obstacle, type Plan } from './plan.schema'
export type { Findings, Settlement, ZoneFindings } from './findings.types'
