export {
  legalRowSchema,
  lifeForms,
  plantRegions,
  plantSchema,
  rootHabits,
  toxicityRowSchema,
  type LegalRow,
  type Plant,
  type PlantRegion,
  type ToxicityRow,
} from './plant.schema'
export type {
  MatchReason,
  MixLine,
  PlantFlags,
  PlantTables,
  PlantVerdict,
  Site,
  ZonePlanting,
} from './plants.types'
