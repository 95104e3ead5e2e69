export {
  coverKinds,
  type Caution,
  type CoverKind,
  type CoverOption,
  type MachineVerdict,
  type MowingVerdict,
  type ZoneCover,
} from './cover.types'
