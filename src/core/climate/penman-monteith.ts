import { meanSaturationKPa, psychrometricKPaPerC, saturationRiseKPaPerC } from './air'

/** Weather that draws water out of grass, mean of a day or a month. */
export interface DrawingWeather {
  readonly tMinC: number
  readonly tMaxC: number
  readonly tMeanC: number
  readonly windMPerS: number
  readonly vapourKPa: number
  readonly pressureKPa: number
  /** Radiation kept, sunlight less heat radiated away [MJ/m² a day]. */
  readonly netRadiationMjPerM2: number
  /** Heat going into the soil [MJ/m² a day]. */
  readonly soilHeatMjPerM2: number
}

/** Water evaporated by a unit of energy [mm m²/MJ] (FAO-56 eq. 20). */
const MM_PER_MJ = 0.408

/**
 * Water that well-watered short grass uses.
 *
 * @param weather - temperatures [°C], wind at 2 m [m/s], pressures [kPa] and energy [MJ/m² a day]
 * @returns reference evapotranspiration [mm/d]; 0 where dew would form, as dew is not counted
 * @see FAO-56 (Allen et al. 1998), eq. 6
 */
export function penmanMonteithMmPerDay(weather: DrawingWeather): number {
  const { tMinC, tMaxC, tMeanC, windMPerS } = weather
  const rise = saturationRiseKPaPerC(tMeanC)
  const psychrometric = psychrometricKPaPerC(weather.pressureKPa)
  const dryness = meanSaturationKPa(tMinC, tMaxC) - weather.vapourKPa
  const byEnergy = MM_PER_MJ * rise * (weather.netRadiationMjPerM2 - weather.soilHeatMjPerM2)
  const byWind = ((psychrometric * 900) / (tMeanC + 273)) * windMPerS * dryness
  return Math.max(0, (byEnergy + byWind) / (rise + psychrometric * (1 + 0.34 * windMPerS)))
}
