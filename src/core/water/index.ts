export type { PlotWater, WaterCover, WaterMonth, WaterUnit, WaterYear } from './water.types'
