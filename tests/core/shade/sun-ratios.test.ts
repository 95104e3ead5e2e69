import { describe, expect, it } from 'vitest'
import { demandOnSlope } from '#core/climate'
import { sunOnPlane, sunRatios } from '#core/shade'
import { months } from '#core/units'
import { ratiosOn, yearSky } from './usual-place'

describe('sunRatios', () => {
  it('FAO-56 on level ground: the ratio is 1 and the demand that of level ground', () => {
    const ratios = ratiosOn(52, 0, 180)
    const { year } = yearSky(52)
    for (const month of months) {
      expect(ratios[month]).toBeCloseTo(1, 5)
      expect(demandOnSlope(year[month], ratios[month])).toBeCloseTo(year[month].referenceEtMmPerDay, 4)
    }
  })

  it.each([45, 50, 55])(
    'Allen, Trezza & Tasumi 2006 as remembered: at %s° north 20° south exceeds level ground in every month, 20° north falls short',
    (latitude) => {
      const [south, north] = [ratiosOn(latitude, 20, 180), ratiosOn(latitude, 20, 0)]
      const { year } = yearSky(latitude)
      for (const month of months) {
        expect(south[month]).toBeGreaterThan(1)
        expect(north[month]).toBeLessThan(1)
        const level = year[month].referenceEtMmPerDay
        expect(demandOnSlope(year[month], south[month])).toBeGreaterThan(level)
        expect(demandOnSlope(year[month], north[month])).toBeLessThan(level)
      }
      expect(south[11]).toBeGreaterThan(south[5])
    },
  )

  it('property: east and west slopes have the same ratio', () => {
    const [east, west] = [ratiosOn(50, 20, 90), ratiosOn(50, 20, 270)]
    for (const month of months) expect(east[month]).toBeCloseTo(west[month], 5)
  })

  it('gives 1 where a month has no sun, and 0 outside the plot', () => {
    expect(ratiosOn(80, 20, 180)[11]).toBe(1)
    const sun = sunOnPlane({ slopeDeg: 10, aspectDeg: 0 }, yearSky(52))
    const outside = { ...sun, skyView: Float32Array.of(0) }
    expect(sunRatios(outside, Float64Array.of(NaN))[3][0]).toBe(0)
  })

  it('refuses grids that do not fit', () => {
    const sun = sunOnPlane({ slopeDeg: 10, aspectDeg: 0 }, yearSky(52))
    expect(() => sunRatios(sun, new Float64Array(4))).toThrow(/must have 1 cells, got 4/)
  })
})
