import { describe, expect, it } from 'vitest'
import { toDegrees, toRadians } from '#core/units'
import { cellPlanes } from '../../../src/core/shade/cell-planes'
import { collectDay } from '../../../src/core/shade/collect-day'
import { sunsetHourAngleRad } from '../../../src/core/sun/day-sun'
import { sunAtHourAngle } from '../../../src/core/sun/sun-vector'
import { readTruth } from './read-truth'

const truth = readTruth<{ latitudeDeg: number; planes: number[][]; days: Record<string, number[]> }>(
  'sun-no-air',
)

/** A wall is no ground: our planes stop short of 90°. */
const slopes = truth.planes.map((plane, at) => ({ plane, at })).filter(({ plane }) => plane[0]! < 90)
const STEPS = 4000
const JOULES_PER_WH = 3600

/** A day of sun with no air in its way: Cooper's declination, 1367 W/m². */
function stepsWithoutAir(dayOfYear: number) {
  const declination = toRadians(23.45 * Math.sin(toRadians((360 * (284 + dayOfYear)) / 365)))
  const beamWPerM2 = 1367 * (1 + 0.033 * Math.cos(toRadians((360 * dayOfYear) / 365)))
  const latitude = toRadians(truth.latitudeDeg)
  const sunset = sunsetHourAngleRad(latitude, declination)
  const hours = toDegrees(2 * sunset) / 15 / STEPS
  return Array.from({ length: STEPS }, (_, at) => {
    const sun = sunAtHourAngle(latitude, declination, sunset * ((2 * at + 1) / STEPS - 1))
    return { sun, altitudeRad: Math.asin(sun.up), solarHour: 12, hours, beamWPerM2, diffuseWPerM2: 0, beamShare: 1 }
  })
}

describe('collectDay without air', () => {
  it.each(Object.entries(truth.days))(
    'Swift 1976 geometry, day %s: direct radiation on seven planes, two sunny spells on steep northern ones included',
    (day, mjPerM2) => {
      const planes = cellPlanes({
        slopeDeg: Float64Array.from(slopes, ({ plane }) => plane[0]!),
        aspectDeg: Float64Array.from(slopes, ({ plane }) => plane[1]!),
      })
      const on = { planes, skyView: Float32Array.from(planes.ownSky), albedo: 0, litAt: undefined }
      const sums = collectDay(stepsWithoutAir(Number(day)), on)
      slopes.forEach(({ at }, cell) =>
        expect(Math.abs((sums.beamWhPerM2[cell]! * JOULES_PER_WH) / 1e6 - mjPerM2[at]!)).toBeLessThan(0.012),
      )
    },
  )

  it.each([
    [52, 20, 180, 32],
    [52, 20, 0, 72],
    [40, 30, 225, 16.609],
  ])(
    'Lee 1962 equivalent slope: %s° north, %s° to %s° lies like level ground at %s° north',
    (latitude, slope, aspect, equivalent) => {
      const square = { slope: toRadians(slope), aspect: toRadians(aspect), latitude: toRadians(latitude) }
      const planes = cellPlanes({ slopeDeg: Float64Array.of(slope), aspectDeg: Float64Array.of(aspect) })
      const poleward =
        planes.north[0]! * Math.cos(square.latitude) + planes.up[0]! * Math.sin(square.latitude)
      expect(toDegrees(Math.asin(poleward))).toBeCloseTo(equivalent, 3)
    },
  )
})
