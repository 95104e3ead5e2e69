import { describe, expect, it } from 'vitest'
import { gradientToDeg } from '#core/units'
import { textureClasses } from '#core/soil'
import { drainShares } from '../../../src/core/water/drain-shares'
import { rainByDay } from '../../../src/core/water/rain-days'
import { rootedDepth } from '../../../src/core/water/rooted-depth'
import { seepageByFullness } from '../../../src/core/water/seepage'
import { soilOf, truth } from './water-fixtures'

const { lateral } = truth<{
  lateral: {
    sw_excess_mm: number
    ksat_mm_h: number
    slope: number
    drainable_porosity: number
    hill_length_m: number
    expected: { q_mm_day: number }
  }[]
}>('water-curve-number')

const ground = {
  conductivityMmPerH: 15.5,
  baseMmPerH: 15.5,
  slopeDeg: 10,
  lengthM: 20,
  drainableMm: 100,
  drainablePorosity: 0.18,
}

describe('drainage of water above field capacity', () => {
  it.each(lateral)(
    'Sloan & Moore 1984, worked separately: $sw_excess_mm mm at $ksat_mm_h mm/h on $slope m/m over $hill_length_m m',
    ({ sw_excess_mm, ksat_mm_h, slope, drainable_porosity, hill_length_m, expected }) => {
      const { sideways } = drainShares({
        conductivityMmPerH: ksat_mm_h,
        // Hardly any water goes down, so nothing has to be shared.
        baseMmPerH: 1e-6,
        slopeDeg: gradientToDeg(slope),
        lengthM: hill_length_m,
        drainableMm: 100,
        drainablePorosity: drainable_porosity,
      })
      expect(Math.abs(sideways * sw_excess_mm - expected.q_mm_day)).toBeLessThan(0.002)
    },
  )

  it('SWAT 2009 eq. 2:3.2.3: passing takes as long as the pores over the conductivity', () => {
    // 372 mm of pores at 15.5 mm/h: 24 h, so 1 - 1/e leaves in a day on level ground.
    expect(drainShares({ ...ground, slopeDeg: 0, drainableMm: 372 }).down).toBeCloseTo(1 - Math.exp(-1), 10)
  })

  it('level ground hands nothing sideways', () => {
    expect(drainShares({ ...ground, slopeDeg: 0 }).sideways).toBe(0)
    const creep = seepageByFullness(soilOf('clay'), 0.5, { slopeDeg: 0, lengthM: 4 })
    expect(creep(1)).toBe(0)
  })

  it('never hands on more than there is, and shares what both ways ask for', () => {
    const { sideways, down } = drainShares({ ...ground, slopeDeg: 60, lengthM: 0.5, drainableMm: 10 })
    expect(sideways + down).toBeCloseTo(1, 10)
    expect(Math.min(sideways, down)).toBeGreaterThan(0)
  })

  it('Saxton & Rawls 2006 eq. 17: creep is Darcy’s flow when the pores are full, and shrinks as the soil dries', () => {
    const soil = { ...soilOf('loam'), fieldCapacity: 0.4589, saturation: 0.4589 }
    const lie = { slopeDeg: 30, lengthM: 5 }
    const full = seepageByFullness(soil, 0.8, lie)(1)
    expect(full).toBeCloseTo((24 * soil.conductivityMmPerH * 0.5 * Math.cos(Math.PI / 6) * 0.8) / 5, 8)
    for (const name of textureClasses) {
      const creep = seepageByFullness(soilOf(name), 0.8, lie)
      expect(creep(1)).toBeGreaterThan(creep(0.5))
      expect(creep(0.5)).toBeGreaterThan(0)
    }
  })

  it('roots go no deeper than the soil', () => {
    expect(rootedDepth(soilOf('loam', { depthM: 0.3 }), 0.5)).toEqual({ depthM: 0.3, share: 1, mm: 300 })
    expect(rootedDepth(soilOf('loam', { depthM: 1 }), 0.5).share).toBe(0.5)
    expect(() => rootedDepth(soilOf('loam'), 0)).toThrow(RangeError)
  })

  it('refuses ground that can not be', () => {
    expect(() => drainShares({ ...ground, lengthM: 0 })).toThrow(RangeError)
    expect(() => drainShares({ ...ground, slopeDeg: 90 })).toThrow(RangeError)
    expect(() => seepageByFullness(soilOf('loam'), 0, { slopeDeg: 5, lengthM: 4 })).toThrow(RangeError)
  })
})

describe('rain day by day', () => {
  it('adds up to the month, the same way every time', () => {
    for (const rainMm of [0, 0.4, 5, 55, 240, 1200, 3000])
      for (const days of [28, 30, 31]) {
        const byDay = rainByDay(rainMm, days)
        expect(byDay).toHaveLength(days)
        expect(byDay.reduce((sum, day) => sum + day, 0)).toBeCloseTo(rainMm, 8)
        expect(Math.min(...byDay)).toBeGreaterThanOrEqual(0)
        expect(rainByDay(rainMm, days)).toEqual(byDay)
      }
  })

  it('Geng et al. 1986: days differ in size as daily rain does, about as much as their mean', () => {
    const wet = rainByDay(240, 30).filter((day) => day > 0)
    const mean = wet.reduce((sum, day) => sum + day, 0) / wet.length
    const spread = Math.sqrt(wet.reduce((sum, day) => sum + (day - mean) ** 2, 0) / wet.length)
    // An exponential has a spread of 1 mean; middles of slices lose some of its tail.
    expect(spread / mean).toBeGreaterThan(0.75)
    expect(spread / mean).toBeLessThan(1.05)
  })

  it('Chen et al. 2012: Ottawa, 882 mm a year in days of 6.1 mm', () => {
    const days = rainByDay(882 / 12, 30).filter((day) => day > 0).length
    // The observed mean wet day is 6.1 mm; one month in a whole number of days allows 6 %.
    expect(Math.abs(882 / 12 / days - 6.1)).toBeLessThan(0.37)
  })

  it('refuses rain below nothing and a month without days', () => {
    expect(() => rainByDay(-1, 30)).toThrow(RangeError)
    expect(() => rainByDay(10, 0)).toThrow(RangeError)
  })
})
