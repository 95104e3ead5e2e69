export {
  soilSampleSchema,
  textureClasses,
  textureSchema,
  type SoilSample,
  type Texture,
  type TextureClass,
} from './soil.schema'
export { soilTablesSchema, type SoilTables } from './soilTables.schema'
export type { SoilProperties } from './soil.types'
export { soilProperties } from './soilProperties'
export { soilProblems } from './soilProblems'
export { readJar } from './jarTest'
export { erodibility } from './erodibility'
export { poreSizeIndex } from './waterHolding'
export { coarseTexture, describeSoil } from './describeSoil'
