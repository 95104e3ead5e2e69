import { describe, expect, it } from 'vitest'
import { daySun, sunAtHourAngle, sunsetHourAngleRad } from '#core/sun'
import { toDegrees, toRadians } from '#core/units'
import { readGolden } from './read-golden'

const solar = readGolden()
const JOULES_PER_WH = 3600

/** Declination after Cooper 1969 and radiation above the air, as Duffie & Beckman take them (eq. 1.6.1 and 1.4.1). */
const cooperRad = (dayOfYear: number) =>
  toRadians(23.45 * Math.sin(toRadians((360 * (284 + dayOfYear)) / 365)))
const aboveAirW = (dayOfYear: number) => 1367 * (1 + 0.033 * Math.cos(toRadians((360 * dayOfYear) / 365)))

/** Radiation above the air on level ground between two hour angles, added up along our sun's way [MJ/m²]. */
function aboveAirMj(latitudeDeg: number, dayOfYear: number, fromRad: number, toRad: number): number {
  const steps = 2000
  const hours = ((toRad - fromRad) * 12) / Math.PI / steps
  let wh = 0
  for (let at = 0; at < steps; at += 1) {
    const hourAngle = fromRad + ((toRad - fromRad) * (at + 0.5)) / steps
    wh +=
      aboveAirW(dayOfYear) *
      sunAtHourAngle(toRadians(latitudeDeg), cooperRad(dayOfYear), hourAngle).up *
      hours
  }
  return (wh * JOULES_PER_WH) / 1e6
}

const sunset = (latitudeDeg: number, dayOfYear: number) =>
  sunsetHourAngleRad(toRadians(latitudeDeg), cooperRad(dayOfYear))

describe('daySun', () => {
  it.each(Object.entries(solar.days))(
    'GRASS r.sun %s (declination of Gruter 1984 after Hofierka & Suri 2002): declination and radiation above the air as it prints them',
    (_, { dayOfYear, declinationRad, aboveAirWPerM2, sunriseH }) => {
      const day = daySun(dayOfYear)
      expect(Math.abs(day.declinationRad - declinationRad)).toBeLessThan(1e-6)
      expect(Math.abs(day.aboveAirWPerM2 - aboveAirWPerM2)).toBeLessThan(1e-4)
      const riseH = 12 - (sunsetHourAngleRad(toRadians(52), day.declinationRad) * 12) / Math.PI
      expect(Math.abs(riseH - sunriseH)).toBeLessThan(0.0051)
    },
  )

  it('refuses days out of the year', () => {
    expect(() => daySun(0)).toThrow(/day of the year \[d\] must be from 1 to 366, got 0/)
    expect(() => daySun(367)).toThrow(RangeError)
  })
})

describe('sunsetHourAngleRad and sunAtHourAngle', () => {
  it('Duffie & Beckman example 1.6.3: the sun sets at 87.8° on 16 March at 43° north', () => {
    expect(Math.abs(toDegrees(sunset(43, 75)) - 87.8)).toBeLessThan(0.1)
  })

  it.each([
    ['1.10.1: 33.8 MJ/m² above the air at 43° north on 15 April', 43, 105, 33.8],
    ['2.11.1: 33.3 MJ/m² at 38.6° north on 3 September', 38.6, 246, 33.3],
  ])('Duffie & Beckman example %s', (_, latitudeDeg, dayOfYear, mj) => {
    const set = sunset(latitudeDeg, dayOfYear)
    expect(Math.abs(aboveAirMj(latitudeDeg, dayOfYear, -set, set) - mj)).toBeLessThan(0.06)
  })

  it('Duffie & Beckman example 1.10.2: 3.79 MJ/m² between 10 and 11 at 43° north on 15 April', () => {
    expect(Math.abs(aboveAirMj(43, 105, toRadians(-30), toRadians(-15)) - 3.79)).toBeLessThan(0.005)
  })

  it('common practice, no source: 0 in polar night, half a turn in polar day, a quarter at the equinox', () => {
    expect(sunsetHourAngleRad(toRadians(80), toRadians(-23))).toBe(0)
    expect(sunsetHourAngleRad(toRadians(80), toRadians(23))).toBeCloseTo(Math.PI, 12)
    expect(sunsetHourAngleRad(toRadians(52), 0)).toBeCloseTo(Math.PI / 2, 12)
  })
})
