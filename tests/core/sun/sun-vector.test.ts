import { describe, expect, it } from 'vitest'
import { toDegrees, toRadians, wholeCircleDeg } from '#core/units'
import { incidenceDeg, squareTo, sunAtHourAngle } from '../../../src/core/sun/sun-vector'

const sunAt = (latitudeDeg: number, declinationDeg: number, hourAngleDeg: number) =>
  sunAtHourAngle(toRadians(latitudeDeg), toRadians(declinationDeg), toRadians(hourAngleDeg))

/** Surface azimuth of Duffie & Beckman (from south, west positive) as a compass direction. */
const compass = (fromSouthDeg: number) => 180 + fromSouthDeg

describe('sunAtHourAngle and incidenceDeg', () => {
  it('Duffie & Beckman example 1.6.1: incidence 35° at Madison, 13 February, 10:30 solar time', () => {
    const theta = incidenceDeg(squareTo(45, compass(15)), sunAt(43, -14, -22.5))
    expect(Math.cos(toRadians(theta))).toBeCloseTo(0.817, 3)
    expect(Math.round(theta)).toBe(35)
  })

  it.each([
    [-14, -37.5, 66.5, -40],
    [23.1, 97.5, 79.6, 112],
  ])(
    'Duffie & Beckman example 1.6.2: declination %s°, hour angle %s°: zenith %s°, azimuth %s°',
    (declination, hour, zenith, azimuth) => {
      const sun = sunAt(43, declination, hour)
      expect(Math.abs(toDegrees(Math.acos(sun.up)) - zenith)).toBeLessThan(0.1)
      expect(
        Math.abs(wholeCircleDeg(toDegrees(Math.atan2(sun.east, sun.north))) - compass(azimuth)),
      ).toBeLessThan(0.1)
    },
  )

  it('Duffie & Beckman example 1.6.3: altitude 19.7° and azimuth 66.8° at 43° north, 16 March, 16:00', () => {
    const sun = sunAt(43, -2.4, 60)
    expect(toDegrees(Math.asin(sun.up))).toBeCloseTo(19.7, 1)
    expect(wholeCircleDeg(toDegrees(Math.atan2(sun.east, sun.north)))).toBeCloseTo(compass(66.8), 1)
  })

  it.each([
    ['1.8.1', 43, -14, -22.5, 45, 15, 1.66],
    ['1.8.2', 40, -13, -37.5, 30, 0, 1.61],
    ['1.8.3', 40, -13, -37.5, 50, 0, 1.79],
  ])(
    'Duffie & Beckman example %s: beam on the slope over beam on the level',
    (_, latitude, declination, hour, tilt, azimuth, ratio) => {
      const sun = sunAt(latitude, declination, hour)
      const beamRatio = Math.cos(toRadians(incidenceDeg(squareTo(tilt, compass(azimuth)), sun))) / sun.up
      expect(Math.abs(beamRatio - ratio)).toBeLessThan(0.01)
    },
  )
})
