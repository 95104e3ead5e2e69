export type {
  CareBrief,
  CareFacts,
  CareYear,
  ComparedCover,
  Job,
  JobMark,
  KeepOff,
  ZoneCare,
} from './care.types'
export { careWindowsSchema, operationsSchema, type CareTables } from './care.schema'
export { careYear, jobsInMonth } from './care-year'
export { roundTripPenalty, walkingSpeedKmh } from './slope-effort'
