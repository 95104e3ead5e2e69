export {
  climateSchema,
  monthNormalsSchema,
  placeSchema,
  type Climate,
  type MonthNormals,
  type Place,
} from './climate.schema'
export type { MonthClimate } from './climate.types'
export { climateOfPlace } from './climateOfPlace'
export { climateYear, type ClimateSite } from './climateYear'
export { coldAirC } from './coldAir'
export { demandOnSlope } from './demandOnSlope'
export { hardWinterC } from './hardWinter'
export { sunRatios } from './sunRatios'
