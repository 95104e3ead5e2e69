import type { Twelve } from '#core/units'
import { erodibility, type SoilProperties, type SoilTables } from '#core/soil'
import type { WaterTables } from './water-tables.schema'
import { rainErosivity } from './rain-erosivity'
import { slopeFactor } from './slope-factor'

/** Density of soil minerals [t/m³]: Saxton & Rawls 2006. */
const MINERAL_DENSITY_T_PER_M3 = 2.65

/** Square metres in a hectare, over millimetres in a metre [m³/(ha mm)]. */
const M3_PER_HA_MM = 10

/** Ground that rain may carry off. */
export interface ErodibleGround {
  readonly soil: SoilProperties
  /** Length down the slope on which water gathers, from its top to the lower end of the place [m plan], above 0. */
  readonly lengthM: number
  readonly slopeDeg: number
  /** Mean rain of each month [mm]. */
  readonly rainMm: Twelve<number>
}

/** Soil lost in a usual year. */
export interface SoilLoss {
  readonly stage: 'bare' | 'establishing' | 'covered'
  readonly coverPercent: number
  /** [t/(ha a)] */
  readonly tPerHaYear: number
  /** Depth of soil lost [mm a year]. */
  readonly mmPerYear: number
}

/**
 * Soil that rain carries off a place in a usual year: bare, while plants take hold, and once covered.
 *
 * No practice across the slope is counted (P is 1). A figure to compare places and covers by, within a
 * factor of two or three at best.
 *
 * @param ground - soil, slope and rain
 * @param soilTables - for the soil's erodibility
 * @param waterTables - for the stages and what cover saves
 * @returns one loss for each stage
 * @throws RangeError when a measure of the ground is outside its range
 * @see AH-703 (Renard et al. 1997): A = R K LS C P
 */
export function soilLoss(
  ground: ErodibleGround,
  soilTables: SoilTables,
  waterTables: WaterTables,
): readonly SoilLoss[] {
  const { soil, lengthM, slopeDeg, rainMm } = ground
  const bareTPerHaYear =
    rainErosivity(rainMm) *
    erodibility(soil.textureClass, soil.organicPercent, soilTables) *
    slopeFactor(lengthM, slopeDeg)
  const densityTPerM3 = (1 - soil.saturation) * MINERAL_DENSITY_T_PER_M3
  return waterTables.stages.map(({ stage, coverPercent }) => {
    const tPerHaYear = bareTPerHaYear * coverFactor(coverPercent, waterTables)
    return { stage, coverPercent, tPerHaYear, mmPerYear: tPerHaYear / (densityTPerM3 * M3_PER_HA_MM) }
  })
}

/**
 * Soil lost under a close cover over that of bare ground.
 *
 * @param coverPercent - ground covered by plants, mulch or stones [%], 0 to 100
 * @param tables - water tables; between two rows the factor runs straight
 * @returns cover factor C [-], 0 to 1
 * @throws RangeError when the cover is outside its range
 * @see AH-537 table 10, grass and close cover without canopy
 */
export function coverFactor(coverPercent: number, tables: WaterTables): number {
  const rows = tables.groundCover
  const above = rows.findIndex((row) => row.coverPercent >= coverPercent)
  const high = rows[above]
  if (!(coverPercent >= 0) || high === undefined)
    throw new RangeError(`coverFactor: coverPercent must be 0 to 100, got ${coverPercent}`)
  const low = rows[above - 1] ?? high
  const step = high.coverPercent - low.coverPercent
  const way = step === 0 ? 0 : (coverPercent - low.coverPercent) / step
  return low.factor * (1 - way) + high.factor * way
}
