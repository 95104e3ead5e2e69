export {
  legalRowSchema,
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
export type { PlantingWish } from './planting-wish'
export { lawsOver, legalRegions } from './legal-regions'
export { plantNamed } from './plant-named'
export { plantVerdict } from './verdict'
export { plantingOf } from './planting'
