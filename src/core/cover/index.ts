export {
  coverKinds,
  type Caution,
  type CoverBrief,
  type CoverFacts,
  type CoverKind,
  type CoverOption,
  type MachineVerdict,
  type MowingVerdict,
  type TerraceFigures,
  type ZoneCover,
} from './cover.types'
export {
  coverCautionsSchema,
  coverLimitsSchema,
  coverRulesSchema,
  machinesSchema,
  type CoverTables,
  type Machine,
} from './cover.schema'
export { closeCall } from './close-call'
export { coverOf } from './cover-of'
export { machineOf } from './machines'
export { refusalOf, workLimit } from './refusals'
