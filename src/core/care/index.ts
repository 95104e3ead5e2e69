export type { CareYear, ComparedCover, Job, JobMark, KeepOff, ZoneCare } from './care.types'
