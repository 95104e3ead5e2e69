export type {
  EdgeStretch,
  PlotWater,
  UnitEdge,
  WaterClimate,
  WaterMonth,
  WaterUnit,
  WaterYear,
} from './water.types'
export {
  waterTablesSchema,
  type GroundBeyond,
  type WaterCover,
  type WaterTables,
} from './water-tables.schema'
export { waterYear } from './water-year'
export { slopePlaces, typicalSlope } from './typical-slope'
export { coverFactor, soilLoss, type SoilLoss } from './soil-loss'
