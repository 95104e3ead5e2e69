export {
  soilSampleSchema,
  textureClasses,
  textureSchema,
  type SoilSample,
  type Texture,
  type TextureClass,
} from './soil.schema'
export type { SoilProperties } from './soil.types'
