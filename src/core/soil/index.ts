export {
  soilSampleSchema,
  textureClasses,
  type SoilSample,
  type Texture,
  type TextureClass,
} from './soil.schema'
export { soilTablesSchema, type SoilTables } from './soil-tables.schema'
export type { SoilProperties } from './soil.types'
export { soilProperties } from './soil-properties'
export { soilProblems } from './soil-problems'
export { readJar } from './jar-test'
export { erodibility } from './erodibility'
export { poreSizeIndex } from './water-holding'
export { coarseTexture, describeSoil } from './describe-soil'
