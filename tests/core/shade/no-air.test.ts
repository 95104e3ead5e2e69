import { describe, expect, it } from 'vitest'
import { placeDay, type PlaceSky } from '#core/shade'
import { toDegrees, toRadians } from '#core/units'
import { sunAtHourAngle, sunsetHourAngleRad } from '#core/sun'
import { cellPlanes } from '../../../src/core/shade/cell-planes'
import { collectDay } from '../../../src/core/shade/collect-day'
import { squareTo } from '../../../src/core/sun/sun-vector'
import { readTruth } from './read-truth'
import { aboveAirWPerM2, cooperRad, stepsWithoutAir } from './without-air'

const truth = readTruth<{ latitudeDeg: number; planes: number[][]; days: Record<string, number[]> }>(
  'sun-no-air',
)

/** A wall is no ground: our planes stop short of 90°. */
const slopes = truth.planes.map((plane, at) => ({ plane, at })).filter(({ plane }) => plane[0]! < 90)
const JOULES_PER_WH = 3600

/** Latitude at which level ground meets the sun as a slope does, and how much further on the sun then is (Lee 1962). */
function equivalent(latitudeDeg: number, slopeDeg: number, aspectDeg: number) {
  const [latitude, slope, aspect] = [toRadians(latitudeDeg), toRadians(slopeDeg), toRadians(aspectDeg)]
  const poleward =
    Math.cos(slope) * Math.sin(latitude) + Math.sin(slope) * Math.cos(latitude) * Math.cos(aspect)
  const outward =
    Math.cos(slope) * Math.cos(latitude) - Math.sin(slope) * Math.sin(latitude) * Math.cos(aspect)
  return {
    latitudeRad: Math.asin(poleward),
    shiftRad: Math.atan2(Math.sin(slope) * Math.sin(aspect), outward),
  }
}

/** Hour angles at which the sun is up at the place and over the slope's equivalent horizon, in order [rad]. */
function common(
  placeRad: number,
  slopeRad: number,
  shiftRad: number,
): readonly (readonly [number, number])[] {
  return [-2, 0, 2]
    .map((turn) => turn * Math.PI - shiftRad)
    .map((middle) => [Math.max(-placeRad, middle - slopeRad), Math.min(placeRad, middle + slopeRad)] as const)
    .filter(([from, to]) => to > from)
}

/** A place on a slope with nothing around it. */
function openPlace(slopeDeg: number, aspectDeg: number): PlaceSky {
  const flat = new Float32Array(360)
  return {
    at: { eastM: 0, northM: 0 },
    levelM: 0,
    slopeDeg,
    aspectDeg,
    groundDeg: flat,
    farDeg: flat,
    things: [],
  }
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
      const steps = stepsWithoutAir(truth.latitudeDeg, cooperRad(Number(day)), aboveAirWPerM2(Number(day)))
      const sums = collectDay(steps, on)
      slopes.forEach(({ at }, cell) =>
        expect(Math.abs((sums.beamWhPerM2[cell]! * JOULES_PER_WH) / 1e6 - mjPerM2[at]!)).toBeLessThan(0.012),
      )
    },
  )

  it.each([
    [52, 20, 180, 32, 0],
    [52, 20, 0, 72, 0],
    [52, 20, 90, 47.773, 30.591],
    [40, 30, 225, 16.609, -21.651],
    [52, 45, 0, 83, 180],
    [52, 80, 0, 48, 180],
    [-40, 30, 315, -16.609, -21.651],
  ])(
    'Lee 1962 equivalent slope: %s° latitude, %s° to %s° lies like level ground at %s° with the sun %s° further on',
    (latitude, slope, aspect, equivalentDeg, shiftDeg) => {
      const sunny = equivalent(latitude, slope, aspect)
      expect(toDegrees(sunny.latitudeRad)).toBeCloseTo(equivalentDeg, 3)
      expect(toDegrees(sunny.shiftRad)).toBeCloseTo(shiftDeg, 3)
      const square = squareTo(slope, aspect)
      for (const dayOfYear of [20, 80, 130, 172, 260, 355])
        for (let hourAngle = -3.1; hourAngle < 3.1; hourAngle += 0.1) {
          const declination = cooperRad(dayOfYear)
          const sun = sunAtHourAngle(toRadians(latitude), declination, hourAngle)
          const facing = square.east * sun.east + square.north * sun.north + square.up * sun.up
          const level = sunAtHourAngle(sunny.latitudeRad, declination, hourAngle + sunny.shiftRad).up
          expect(facing).toBeCloseTo(level, 10)
        }
    },
  )

  it.each([
    [52, 20, 180],
    [52, 20, 0],
    [52, 20, 90],
    [40, 30, 225],
    [52, 45, 0],
    [52, 80, 0],
    [60, 70, 20],
    [-35, 25, 300],
    [-45, 75, 180],
    [0, 40, 0],
  ])(
    'Lee 1962: hours of sun and radiation of a day, %s° latitude, %s° to %s°, are those of the equivalent level ground while the sun is up at the place itself',
    (latitude, slope, aspect) => {
      const sunny = equivalent(latitude, slope, aspect)
      for (const dayOfYear of [20, 80, 130, 172, 260, 355]) {
        const declination = cooperRad(dayOfYear)
        const spells = common(
          sunsetHourAngleRad(toRadians(latitude), declination),
          sunsetHourAngleRad(sunny.latitudeRad, declination),
          sunny.shiftRad,
        )
        const planes = cellPlanes({ slopeDeg: Float64Array.of(slope), aspectDeg: Float64Array.of(aspect) })
        const on = { planes, skyView: Float32Array.from(planes.ownSky), albedo: 0, litAt: undefined }
        const beam = aboveAirWPerM2(dayOfYear)
        const day = collectDay(stepsWithoutAir(latitude, declination, beam), on)
        const hours = spells.reduce((sum, [from, to]) => sum + ((to - from) * 12) / Math.PI, 0)
        expect(Math.abs(day.sunHours[0]! - hours)).toBeLessThan(0.02)
        const whPerM2 = spells.reduce((sum, [from, to]) => {
          const a = Math.sin(sunny.latitudeRad) * Math.sin(declination)
          const b = Math.cos(sunny.latitudeRad) * Math.cos(declination)
          const sine = Math.sin(to + sunny.shiftRad) - Math.sin(from + sunny.shiftRad)
          return sum + ((beam * 12) / Math.PI) * (a * (to - from) + b * sine)
        }, 0)
        expect(Math.abs(day.beamWhPerM2[0]! - whPerM2)).toBeLessThan(0.001 * whPerM2 + 1)
      }
    },
  )

  it('Lee 1962: a slope of 80° facing the pole at 52° north has two sunny spells at midsummer, from 3:45 to 7:55 and from 16:05 to 20:15', () => {
    const declination = cooperRad(172)
    const sunny = equivalent(52, 80, 0)
    const spells = common(
      sunsetHourAngleRad(toRadians(52), declination),
      sunsetHourAngleRad(sunny.latitudeRad, declination),
      sunny.shiftRad,
    ).map((spell) => spell.map((hourAngle) => 12 + (hourAngle * 12) / Math.PI))
    expect(spells.length).toBe(2)
    const place = placeDay(openPlace(80, 0), 52, 172)
    expect(place.spells.length).toBe(2)
    place.spells.forEach(({ fromH, toH }, at) => {
      // Our declination differs from Cooper's by 0.01° on that day.
      expect(Math.abs(fromH - spells[at]![0]!)).toBeLessThan(0.02)
      expect(Math.abs(toH - spells[at]![1]!)).toBeLessThan(0.02)
    })
    expect(Math.abs(place.spells[0]!.fromH - 3.75)).toBeLessThan(0.05)
    expect(Math.abs(place.spells[0]!.toH - 7.92)).toBeLessThan(0.05)
  })
})
