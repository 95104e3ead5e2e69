/** Share of sunlight that reference grass keeps [1]: 1 less its albedo of 0.23 (FAO-56 eq. 38). */
const KEPT_BY_GRASS = 0.77
/** Stefan-Boltzmann constant [MJ/K⁴ m² d] (FAO-56 eq. 39). */
const STEFAN_BOLTZMANN = 4.903e-9
/** 0 °C as FAO-56 takes it here [K]. */
const ZERO_K = 273.16

/** What heat radiation depends on. */
export interface NightSky {
  readonly tMinC: number
  readonly tMaxC: number
  readonly vapourKPa: number
  /** Radiation over that of a clear sky, 0 to 1. */
  readonly clearSkyRatio: number
}

/**
 * Sunlight kept by reference grass.
 *
 * @param solarMjPerM2 - radiation on the ground [MJ/m² a day], 0 or more
 * @returns radiation kept [MJ/m² a day]
 * @see FAO-56 (Allen et al. 1998), eq. 38
 */
export function keptSunlightMjPerM2(solarMjPerM2: number): number {
  return KEPT_BY_GRASS * solarMjPerM2
}

/**
 * Heat that reference grass radiates away, net of what the sky sends back.
 *
 * @param sky - temperatures [°C], vapour pressure [kPa] and clearness [1]
 * @returns heat lost [MJ/m² a day]
 * @see FAO-56 (Allen et al. 1998), eq. 39
 */
export function netLongwaveMjPerM2(sky: NightSky): number {
  const { tMinC, tMaxC, vapourKPa, clearSkyRatio } = sky
  const warmth = (STEFAN_BOLTZMANN * ((tMaxC + ZERO_K) ** 4 + (tMinC + ZERO_K) ** 4)) / 2
  return warmth * (0.34 - 0.14 * Math.sqrt(vapourKPa)) * (1.35 * clearSkyRatio - 0.35)
}
