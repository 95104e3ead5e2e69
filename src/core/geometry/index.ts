export type { GridFrame, LevelPoint, PlanPoint, Ring, Tin } from './geometry.types'
