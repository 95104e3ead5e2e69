import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { daylightHours, extraterrestrialMjPerM2 } from '#core/climate'
import { dayOnPlane, sunOnPlane } from '#core/shade'
import { daySun, directionTo, squareTo, sunSteps, sunsetHourAngleRad, usualSteps } from '#core/sun'
import { eachMonth, months, toRadians } from '#core/units'
import { castShade } from '../../../src/core/shade/cast-shade'
import { cellPlanes } from '../../../src/core/shade/cell-planes'
import { collectDay } from '../../../src/core/shade/collect-day'
import { incidenceDeg } from '../../../src/core/sun/sun-vector'
import { yearSky } from './usual-place'
import { cooperRad, stepsWithoutAir } from './without-air'

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const anyDay = fc.integer({ min: 1, max: 365 })
const anyAir = fc.record({
  latitudeDeg: number(-90, 90),
  elevationM: number(0, 3000),
  linke: number(1, 8),
  albedo: number(0, 1),
  dayOfYear: anyDay,
})

describe('hours of a flat open plot', () => {
  const faoDeclinationRad = (dayOfYear: number) => 0.409 * Math.sin((2 * Math.PI * dayOfYear) / 365 - 1.39)

  it('FAO-56 eq. 25 and 34: our geometry with its declination gives its daylight hours exactly, anywhere on any day', () => {
    fc.assert(
      fc.property(number(-89, 89), anyDay, (latitudeDeg, dayOfYear) => {
        const sunset = sunsetHourAngleRad(toRadians(latitudeDeg), faoDeclinationRad(dayOfYear))
        expect((24 * sunset) / Math.PI).toBeCloseTo(daylightHours(latitudeDeg, dayOfYear), 10)
      }),
    )
  })

  it.each([
    [0, 0.001],
    [30, 0.1],
    [40, 0.145],
    [52, 0.223],
    [60, 0.308],
    [-35, 0.121],
  ])(
    'FAO-56 daylight hours at %s° latitude, with our declination: within %s h in every month',
    (latitudeDeg, within) => {
      const open = sunOnPlane({ slopeDeg: 0, aspectDeg: -1 }, yearSky(latitudeDeg)).openLevel
      const off = open.map(({ sunHours, dayOfYear }) =>
        Math.abs(sunHours - daylightHours(latitudeDeg, dayOfYear)),
      )
      for (const one of off) expect(one).toBeLessThan(within)
    },
  )
})

describe('energy', () => {
  const steepness = number(0, 80)

  it('property: on a day whose sun climbs over 1° level ground never gets more than there is above the air, and no plane more beam than without air', () => {
    fc.assert(
      fc.property(anyAir, steepness, number(0, 359), (choice, slopeDeg, aspectDeg) => {
        const { declinationRad, aboveAirWPerM2 } = daySun(choice.dayOfYear)
        const level = dayOnPlane({ slopeDeg: 0, aspectDeg: -1 }, choice)
        const steps = sunSteps(choice)
        const highest = Math.max(0, ...steps.map(({ altitudeRad }) => altitudeRad))
        // The Atlas leaves some 3 W/m² of sky light when the sun only skims the horizon.
        fc.pre(steps.length === 0 || highest > toRadians(1))
        const aboveAir = steps.reduce((sum, { sun, hours }) => sum + aboveAirWPerM2 * sun.up * hours, 0)
        expect(level.beamWhPerM2[0]! + level.diffuseWhPerM2[0]!).toBeLessThanOrEqual(aboveAir * (1 + 1e-6))
        const slope = dayOnPlane({ slopeDeg, aspectDeg }, choice)
        const planes = cellPlanes({
          slopeDeg: Float64Array.of(slopeDeg),
          aspectDeg: Float64Array.of(aspectDeg),
        })
        const on = { planes, skyView: Float32Array.from(planes.ownSky), albedo: 0, litAt: undefined }
        const airless = collectDay(
          stepsWithoutAir(choice.latitudeDeg, declinationRad, aboveAirWPerM2, Math.max(1, steps.length)),
          on,
        )
        expect(slope.beamWhPerM2[0]!).toBeLessThanOrEqual(airless.beamWhPerM2[0]! * (1 + 1e-5) + 1e-3)
      }),
      { numRuns: 300 },
    )
  })

  it('property: the usual sky adds up to the month’s light on level ground, which is below that above the air', () => {
    fc.assert(
      fc.property(anyAir, number(0.1, 0.75), number(0.1, 1), (choice, clearness, diffuseShare) => {
        const levelWhPerM2 =
          (clearness * extraterrestrialMjPerM2(choice.latitudeDeg, choice.dayOfYear)) / 0.0036
        const steps = usualSteps(sunSteps(choice), { levelWhPerM2, diffuseShare })
        const sum = steps.reduce(
          (total, { step, directWPerM2, evenWPerM2 }) =>
            total + (directWPerM2 * step.sun.up + evenWPerM2) * step.hours,
          0,
        )
        if (steps.length === 0) expect(sum).toBe(0)
        else expect(sum).toBeLessThanOrEqual(levelWhPerM2 * (1 + 1e-9))
      }),
      { numRuns: 300 },
    )
  })
})

describe('turning plot and sun together', () => {
  it('property: a plane and the sun turned by any angle meet at the same angle', () => {
    const angle = number(0, 359)
    fc.assert(
      fc.property(
        number(0, 89),
        angle,
        number(-10, 90),
        angle,
        angle,
        (slope, aspect, height, azimuth, turn) => {
          const before = incidenceDeg(squareTo(slope, aspect), directionTo(azimuth, height))
          const after = incidenceDeg(squareTo(slope, aspect + turn), directionTo(azimuth + turn, height))
          expect(Math.cos(toRadians(after))).toBeCloseTo(Math.cos(toRadians(before)), 10)
        },
      ),
    )
  })

  it('property: bumpy ground turned by a quarter under a sun turned by a quarter has the same shadows', () => {
    const [columns, rows] = [31, 23]
    const levels = fc.array(number(0, 12), { minLength: columns * rows, maxLength: columns * rows })
    fc.assert(
      fc.property(levels, number(0, 359), number(3, 60), (list, azimuthDeg, altitudeDeg) => {
        const ground = (levelM: Float64Array, across: number, down: number) => ({
          frame: { columns: across, rows: down, cellM: 2, westM: 0, southM: 0 },
          levelM,
          share: new Float64Array(levelM.length).fill(1),
        })
        const turned = new Float64Array(list.length)
        const at = (cell: number) => (cell % columns) * rows + (rows - 1 - Math.floor(cell / columns))
        list.forEach((level, cell) => (turned[at(cell)] = level))
        const before = castShade(
          ground(Float64Array.from(list), columns, rows),
          directionTo(azimuthDeg, altitudeDeg),
        )
        const after = castShade(ground(turned, rows, columns), directionTo(azimuthDeg + 90, altitudeDeg))
        before.forEach((lit, cell) => expect(after[at(cell)]).toBe(lit))
      }),
      { numRuns: 60 },
    )
  })
})

describe('any latitude', () => {
  it('property: the hemispheres mirror each other: a slope and its twin beyond the equator under the opposite sun', () => {
    fc.assert(
      fc.property(
        number(0, 85),
        number(-23.4, 23.4),
        number(0, 85),
        number(0, 359),
        (latitude, sun, slope, aspect) => {
          const day = (latitudeDeg: number, declinationDeg: number, aspectDeg: number) => {
            const planes = cellPlanes({
              slopeDeg: Float64Array.of(slope),
              aspectDeg: Float64Array.of(aspectDeg),
            })
            const on = { planes, skyView: Float32Array.from(planes.ownSky), albedo: 0.2, litAt: undefined }
            return collectDay(stepsWithoutAir(latitudeDeg, toRadians(declinationDeg), 1367, 200), on)
          }
          const [one, twin] = [day(latitude, sun, aspect), day(-latitude, -sun, 540 - aspect)]
          expect(twin.beamWhPerM2[0]! / 1000).toBeCloseTo(one.beamWhPerM2[0]! / 1000, 3)
          expect(Math.abs(twin.sunHours[0]! - one.sunHours[0]!)).toBeLessThan(0.25)
        },
      ),
      { numRuns: 200 },
    )
  })

  it('common practice, no source: 80° north has 24 hours of sun at midsummer, from all sides, and none at midwinter', () => {
    const place = { latitudeDeg: 80, elevationM: 0, linke: 3, albedo: 0.2 }
    for (const aspectDeg of [0, 90, 180, 270]) {
      const summer = dayOnPlane({ slopeDeg: 5, aspectDeg }, { ...place, dayOfYear: 172 })
      expect(summer.sunHours[0]).toBeCloseTo(24, 4)
      const winter = dayOnPlane({ slopeDeg: 5, aspectDeg }, { ...place, dayOfYear: 355 })
      expect([winter.sunHours[0], winter.beamWhPerM2[0], winter.diffuseWhPerM2[0]]).toEqual([0, 0, 0])
    }
  })

  it('common practice, no source: at the equator the sun passes north of the zenith in June and south of it in December', () => {
    const place = { latitudeDeg: 0, elevationM: 0, linke: 3, albedo: 0.2 }
    const beam = (aspectDeg: number, dayOfYear: number) =>
      dayOnPlane({ slopeDeg: 20, aspectDeg }, { ...place, dayOfYear }).beamWhPerM2[0]!
    expect(beam(0, 172)).toBeGreaterThan(beam(180, 172))
    expect(beam(180, 355)).toBeGreaterThan(beam(0, 355))
    const hours = eachMonth(
      (month) => sunOnPlane({ slopeDeg: 0, aspectDeg: -1 }, yearSky(0)).openLevel[month].sunHours,
    )
    for (const month of months) expect(hours[month]).toBeCloseTo(12, 6)
  })

  it('exact solution: at the pole the sun stands all day at its declination, so a level day is 24 h of its sine', () => {
    const beam = 1000
    const declination = cooperRad(172)
    const planes = cellPlanes({ slopeDeg: Float64Array.of(0), aspectDeg: Float64Array.of(-1) })
    const on = { planes, skyView: Float32Array.of(1), albedo: 0, litAt: undefined }
    const day = collectDay(stepsWithoutAir(90, declination, beam, 48), on)
    expect(day.beamWhPerM2[0]! / (24 * beam * Math.sin(declination))).toBeCloseTo(1, 6)
  })
})
