import type { Climate, MonthNormals } from './climate.schema'
import type { MonthClimate } from './climate.types'
import { clearnessFromSunshine } from './solar-from-sunshine'
import { clearnessFromTemperature, withinClearSky, type Clearness } from './solar-from-temperature'

/** How clear a month is, and what told it. */
export interface MonthClearness extends Clearness {
  readonly from: MonthClimate['solarFrom']
}

/** The month's day under no air. */
interface AboveAir {
  readonly radiationMjPerM2: number
  readonly dayHours: number
  readonly elevationM: number
}

/**
 * How clear a month is: by measured radiation, else by sunshine, else by how far its days are warmer than its nights.
 * A month without sun is told by its temperatures, which then matter to heat radiated away only.
 *
 * @param normals - the month as given
 * @param coast - within some 20 km of a sea or great lake
 * @param day - radiation above the air [MJ/m² a day], length of the day [h] and height above the sea [m]
 * @returns clearness [1], a clear sky being the limit, and what told it
 * @see FAO-56 (Allen et al. 1998), ch. 3: measured radiation, eq. 35 and eq. 50 in this order
 */
export function monthClearness(
  normals: MonthNormals,
  coast: Climate['coast'],
  day: AboveAir,
): MonthClearness {
  const { solarMjPerM2, sunshineHours, tMinC, tMaxC } = normals
  const { radiationMjPerM2, dayHours, elevationM } = day
  const sunny = radiationMjPerM2 > 0 && dayHours > 0
  if (sunny && solarMjPerM2 !== undefined)
    return { ...withinClearSky(solarMjPerM2 / radiationMjPerM2, elevationM), from: 'radiation' }
  if (sunny && sunshineHours !== undefined)
    return { ...clearnessFromSunshine(sunshineHours, dayHours, elevationM), from: 'sunshine' }
  return { ...clearnessFromTemperature(tMaxC - tMinC, coast, elevationM), from: 'temperature' }
}
