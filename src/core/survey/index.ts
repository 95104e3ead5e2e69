export {
  bankSurveySchema,
  groundSurveySchema,
  profileSurveySchema,
  type BankSurvey,
  type Breakline,
  type GridSurvey,
  type GroundSurvey,
  type LevelsSurvey,
  type ProfileSurvey,
} from './survey.schema'
export type { Surface, SurfaceNote } from './surface.types'
export { surfaceFrom } from './surface-from'
export type { SurfaceOptions } from './surface-options.types'
export { riseFromAngleM, riseFromPercentM, riseFromRatioM } from './bank-rise'
export { nearestSource } from './nearest-source'
export { holeProblems } from './plot-holes'
