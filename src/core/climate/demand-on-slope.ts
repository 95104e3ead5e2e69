import type { MonthClimate } from './climate.types'
import { keptSunlightMjPerM2 } from './net-radiation'
import { penmanMonteithMmPerDay } from './penman-monteith'

/**
 * Reference evapotranspiration on a slope, per m² of PLAN so that it can be set against rain. Only the sunlight is
 * changed; wind, moisture of the air and heat radiated away stay those of open level ground.
 *
 * @param month - the month at the plot
 * @param sunRatio - radiation on the slope over radiation on level ground, per m² of plan [1], 0 or more
 * @returns reference evapotranspiration on the slope [mm/d]; exactly that of level ground where the ratio is 1
 * @throws RangeError when the ratio is out of its range
 * @see FAO-56 (Allen et al. 1998), eq. 6, with the radiation of the slope as in Allen, Trezza & Tasumi 2006
 */
export function demandOnSlope(month: MonthClimate, sunRatio: number): number {
  if (!(sunRatio >= 0 && sunRatio < Infinity))
    throw new RangeError(`demandOnSlope: sun ratio [1] must be 0 or more and finite, got ${sunRatio}`)
  const netRadiationMjPerM2 = keptSunlightMjPerM2(month.solarMjPerM2 * sunRatio) - month.netLongwaveMjPerM2
  return penmanMonteithMmPerDay({ ...month, netRadiationMjPerM2 })
}
