import { sunAtHourAngle, sunsetHourAngleRad, type SunStep } from '#core/sun'
import { toDegrees, toRadians } from '#core/units'

/** Declination after Cooper 1969 [rad], and radiation above the air, as Duffie & Beckman and Swift take them [W/m²]. */
export const cooperRad = (dayOfYear: number) =>
  toRadians(23.45 * Math.sin(toRadians((360 * (284 + dayOfYear)) / 365)))
export const aboveAirWPerM2 = (dayOfYear: number) =>
  1367 * (1 + 0.033 * Math.cos(toRadians((360 * dayOfYear) / 365)))

/** A day of sun with no air in its way. */
export function stepsWithoutAir(
  latitudeDeg: number,
  declinationRad: number,
  beamWPerM2: number,
  count = 4000,
) {
  const latitude = toRadians(latitudeDeg)
  const sunset = sunsetHourAngleRad(latitude, declinationRad)
  const hours = toDegrees(2 * sunset) / 15 / count
  return Array.from({ length: count }, (_, at): SunStep => {
    const hourAngle = sunset * ((2 * at + 1) / count - 1)
    const sun = sunAtHourAngle(latitude, declinationRad, hourAngle)
    return {
      sun,
      altitudeRad: Math.asin(sun.up),
      solarHour: 12 + (hourAngle * 12) / Math.PI,
      hours,
      beamWPerM2,
      diffuseWPerM2: 0,
      beamShare: 1,
    }
  })
}
