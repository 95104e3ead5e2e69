import type { Month } from '#core/units'
import type { RootZone } from './root-zone'
import { plantUseMm } from './plant-use'
import { runoffMm } from './runoff'

/** Water that reaches a unit in a day [mm over its plan area]. */
export interface DayIn {
  readonly rainMm: number
  readonly runOnMm: number
  readonly lateralInMm: number
}

/** What becomes of it [mm over the unit's plan area]. */
export interface DayOut {
  /** Water above the wilting point at the day's end. */
  readonly waterMm: number
  /** Water above the wilting point once the day's water has soaked in, before any drains. */
  readonly wettestMm: number
  readonly runoffMm: number
  readonly lateralOutMm: number
  readonly drainageMm: number
  readonly actualEtMm: number
  /** Plants could not keep up at the day's start. */
  readonly dry: boolean
}

/**
 * One day of a rooting depth: rain and run-on soak in or run off, what stands above field capacity
 * drains down and sideways, then plants drink. What the pores can not hold runs off.
 *
 * @param zone - the rooting depth
 * @param waterMm - water above the wilting point at the day's start [mm], 0 to full
 * @param day - water that reaches it [mm]
 * @param month - month of the year, for the day's demand
 * @returns where the water went [mm]; in equals out and change
 * @throws RangeError when an amount is negative
 */
export function rootZoneDay(zone: RootZone, waterMm: number, day: DayIn, month: Month): DayOut {
  const surfaceMm = day.rainMm + day.runOnMm
  const shedMm = zone.retention === undefined ? 0 : runoffMm(surfaceMm, zone.retention(waterMm))
  const soakedMm = waterMm + (surfaceMm - shedMm) + day.lateralInMm
  const overMm = Math.max(0, soakedMm - zone.fullMm)
  const wetMm = soakedMm - overMm
  const excessMm = Math.max(0, wetMm - zone.holdsMm)
  const drainageMm = excessMm * zone.drains.down
  const sidewaysMm = excessMm * zone.drains.sideways
  const drainedMm = wetMm - drainageMm - sidewaysMm
  const creepMm = Math.min(drainedMm, zone.seepage(drainedMm / zone.holdsMm))
  const forPlantsMm = drainedMm - creepMm
  const demandMm = zone.demandMmPerDay[month]
  const easyShare = zone.easyShare[month]
  const actualEtMm = plantUseMm(forPlantsMm, zone.holdsMm, demandMm, easyShare)
  return {
    waterMm: forPlantsMm - actualEtMm,
    wettestMm: wetMm,
    runoffMm: shedMm + overMm,
    lateralOutMm: sidewaysMm + creepMm,
    drainageMm,
    actualEtMm,
    dry: forPlantsMm < (1 - easyShare) * zone.holdsMm,
  }
}
