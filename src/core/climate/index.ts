export {
  climateSchema,
  monthNormalsSchema,
  placeSchema,
  type Climate,
  type MonthNormals,
  type Place,
} from './climate.schema'
