/**
 * Pressure of the air at a height.
 *
 * @param elevationM - height above the sea [m], -430 to 6000
 * @returns pressure [kPa]
 * @see FAO-56 (Allen et al. 1998), eq. 7
 */
export function pressureKPa(elevationM: number): number {
  return 101.3 * ((293 - 0.0065 * elevationM) / 293) ** 5.26
}

/**
 * Psychrometric constant.
 *
 * @param airPressureKPa - pressure of the air [kPa]
 * @returns psychrometric constant [kPa/°C]
 * @see FAO-56 (Allen et al. 1998), eq. 8
 */
export function psychrometricKPaPerC(airPressureKPa: number): number {
  return 0.000665 * airPressureKPa
}

/**
 * Vapour pressure of saturated air.
 *
 * @param temperatureC - temperature of the air [°C], -70 to 60
 * @returns vapour pressure [kPa]
 * @see FAO-56 (Allen et al. 1998), eq. 11
 */
export function saturationKPa(temperatureC: number): number {
  return 0.6108 * Math.exp((17.27 * temperatureC) / (temperatureC + 237.3))
}

/**
 * Mean vapour pressure of saturation over a day.
 *
 * @param tMinC - daily minimum [°C], -70 to 60
 * @param tMaxC - daily maximum [°C], -70 to 60
 * @returns vapour pressure [kPa]
 * @see FAO-56 (Allen et al. 1998), eq. 12
 */
export function meanSaturationKPa(tMinC: number, tMaxC: number): number {
  return (saturationKPa(tMinC) + saturationKPa(tMaxC)) / 2
}

/**
 * How fast the vapour pressure of saturation rises with temperature.
 *
 * @param temperatureC - temperature of the air [°C], -70 to 60
 * @returns rise [kPa/°C]
 * @see FAO-56 (Allen et al. 1998), eq. 13
 */
export function saturationRiseKPaPerC(temperatureC: number): number {
  return (4098 * saturationKPa(temperatureC)) / (temperatureC + 237.3) ** 2
}
