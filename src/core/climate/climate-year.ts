import { daysInMonth, eachMonth, type Month, type Twelve } from '#core/units'
import { representativeDays, withinRange } from '#core/sun'
import { pressureKPa, saturationKPa } from './air'
import type { Climate, MonthNormals } from './climate.schema'
import type { MonthClimate } from './climate.types'
import { diffuseShare } from './diffuse-share'
import { daylightHours, extraterrestrialMjPerM2 } from './extraterrestrial'
import { frostNightsOf } from './frost-nights'
import { hargreavesMmPerDay } from './hargreaves-et'
import { monthClearness } from './month-clearness'
import { keptSunlightMjPerM2, netLongwaveMjPerM2 } from './net-radiation'
import { penmanMonteithMmPerDay } from './penman-monteith'

/** Cooling with height of free air [°C/m] (FAO-56 eq. 7 takes the same). */
const COOLING_C_PER_M = 0.0065
/** Wind at 2 m where none is known [m/s] (FAO-56 ch. 3). */
const USUAL_WIND_M_PER_S = 2
/** Soil heat for each °C between the months before and after [MJ/m² d °C] (FAO-56 eq. 43). */
const SOIL_HEAT_MJ_PER_C = 0.07
/** Mean temperature above which grass grows [°C]; common practice. */
const GROWING_ABOVE_C = 5

/** Where the plot is. */
export interface ClimateSite {
  /** Latitude [°], north positive, -90 to 90. */
  readonly latitudeDeg: number
  /** Height above the sea [m], -430 to 6000. */
  readonly elevationM: number
}

/**
 * A usual year at the plot, from twelve months of minimum, maximum and rain, with radiation or sunshine where they are
 * known: what is not known is filled by FAO-56's rules for missing data.
 *
 * @param climate - the normals and the height they hold for
 * @param site - latitude [°] and height [m] of the plot
 * @returns the twelve months, January first
 * @throws RangeError when the site is off the globe or fewer than twelve months are given
 * @see FAO-56 (Allen et al. 1998), ch. 3 and 4
 */
export function climateYear(climate: Climate, site: ClimateSite): Twelve<MonthClimate> {
  withinRange('climateYear: latitude [°]', site.latitudeDeg, -90, 90)
  withinRange('climateYear: elevation [m]', site.elevationM, -430, 6000)
  const coolerC = COOLING_C_PER_M * (site.elevationM - climate.elevationM)
  const normals = eachMonth((month) => {
    const given = climate.months[month]
    if (given === undefined)
      throw new RangeError(`climateYear: twelve months are needed, got ${climate.months.length}`)
    const [tMinC, tMaxC] = [given.tMinC - coolerC, given.tMaxC - coolerC]
    return { tMinC, tMaxC, tMeanC: (tMinC + tMaxC) / 2, rainMm: given.rainMm, given }
  })
  return eachMonth((month) => {
    const soilHeatMjPerM2 =
      SOIL_HEAT_MJ_PER_C * (normals[after(month)].tMeanC - normals[before(month)].tMeanC)
    return monthClimate({ ...normals[month], soilHeatMjPerM2, month }, climate, site)
  })
}

const after = (month: Month) => ((month + 1) % 12) as Month
const before = (month: Month) => ((month + 11) % 12) as Month

type Known = Pick<MonthClimate, 'tMinC' | 'tMaxC' | 'tMeanC' | 'rainMm' | 'soilHeatMjPerM2'> & {
  month: Month
  given: MonthNormals
}

function monthClimate({ month, given, ...known }: Known, climate: Climate, site: ClimateSite): MonthClimate {
  const { tMinC, tMaxC } = known
  const dayOfYear = representativeDays[month]
  const aboveAir = extraterrestrialMjPerM2(site.latitudeDeg, dayOfYear)
  const dayHours = daylightHours(site.latitudeDeg, dayOfYear)
  const clear = monthClearness(given, climate.coast, {
    radiationMjPerM2: aboveAir,
    dayHours,
    elevationM: site.elevationM,
  })
  const vapourKPa = saturationKPa(tMinC)
  const solarMjPerM2 = clear.ofAboveAir * aboveAir
  const longwave = netLongwaveMjPerM2({ tMinC, tMaxC, vapourKPa, clearSkyRatio: clear.ofClearSky })
  const weather = {
    ...known,
    windMPerS: climate.windMPerS ?? USUAL_WIND_M_PER_S,
    vapourKPa,
    pressureKPa: pressureKPa(site.elevationM),
  }
  const netRadiationMjPerM2 = keptSunlightMjPerM2(solarMjPerM2) - longwave
  return {
    ...weather,
    daylightHours: dayHours,
    extraterrestrialMjPerM2: aboveAir,
    solarMjPerM2,
    solarFrom: clear.from,
    clearness: clear.ofAboveAir,
    diffuseShare: diffuseShare(clear.ofAboveAir, dayHours),
    netLongwaveMjPerM2: longwave,
    referenceEtMmPerDay: penmanMonteithMmPerDay({ ...weather, netRadiationMjPerM2 }),
    hargreavesEtMmPerDay: hargreavesMmPerDay(tMinC, tMaxC, aboveAir),
    frostNights: frostNightsOf(tMinC, daysInMonth[month]),
    growing: known.tMeanC > GROWING_ABOVE_C,
  }
}
