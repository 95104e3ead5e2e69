/** One month at the plot: normals brought to its height, and what follows from them. */
export interface MonthClimate {
  /** Mean daily minimum, maximum and their middle [°C]. */
  readonly tMinC: number
  readonly tMaxC: number
  readonly tMeanC: number
  /** Mean rain of the month [mm]. */
  readonly rainMm: number
  /** Mean wind at 2 m [m/s]. */
  readonly windMPerS: number
  /** Length of the day, sunrise to sunset, on the month's representative day [h]. */
  readonly daylightHours: number
  /** Radiation above the air on a level plane [MJ/m² a day]. */
  readonly extraterrestrialMjPerM2: number
  /** Radiation on open level ground [MJ/m² a day]. */
  readonly solarMjPerM2: number
  /** What that radiation was told by. */
  readonly solarFrom: 'radiation' | 'sunshine' | 'temperature'
  /** Radiation on level ground over radiation above the air, 0 to 1. */
  readonly clearness: number
  /** Share of the radiation on level ground that comes from the whole sky, not from the sun, 0 to 1. */
  readonly diffuseShare: number
  /** Vapour pressure of the air, dew point taken as the night's minimum [kPa]. */
  readonly vapourKPa: number
  readonly pressureKPa: number
  /** Heat radiated away by the ground, net [MJ/m² a day]. */
  readonly netLongwaveMjPerM2: number
  /** Heat going into the soil as it warms; negative in autumn [MJ/m² a day]. */
  readonly soilHeatMjPerM2: number
  /** FAO-56 reference evapotranspiration on open level ground; never below 0 [mm/d]. */
  readonly referenceEtMmPerDay: number
  /** The same by the simpler method of Hargreaves, as a cross-check [mm/d]. */
  readonly hargreavesEtMmPerDay: number
  /** Nights with air frost to expect, an estimate [nights a month]. */
  readonly frostNights: number
  /** Warm enough for grass to grow: the mean is above 5 °C. */
  readonly growing: boolean
}
