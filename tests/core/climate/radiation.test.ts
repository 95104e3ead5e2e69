import { describe, expect, it } from 'vitest'
import { diffuseShare } from '../../../src/core/climate/diffuse-share'
import { daylightHours, extraterrestrialMjPerM2 } from '../../../src/core/climate/extraterrestrial'
import { clearSkyShare } from '../../../src/core/climate/clear-sky-share'
import { clearnessFromSunshine } from '../../../src/core/climate/solar-from-sunshine'
import { clearnessFromTemperature } from '../../../src/core/climate/solar-from-temperature'
import { readTruth } from './read-truth'

const fao = readTruth<{
  dayOf15th: number[]
  table26: Record<string, number[]>
  table27: Record<string, number[]>
}>('fao-56-climate')
describe('extraterrestrialMjPerM2 and daylightHours', () => {
  it('FAO-56 example 8: 20° south on 3 September has 32.2 MJ/m²', () => {
    expect(extraterrestrialMjPerM2(-20, 246)).toBeCloseTo(32.2, 1)
  })

  it('FAO-56 example 9: and 11.7 h of day', () => {
    expect(daylightHours(-20, 246)).toBeCloseTo(11.7, 1)
  })

  it('FAO-56 example 10: Rio de Janeiro, 15 May: 25.1 MJ/m² and 10.9 h', () => {
    expect(extraterrestrialMjPerM2(-22.9, 135)).toBeCloseTo(25.1, 1)
    expect(daylightHours(-22.9, 135)).toBeCloseTo(10.9, 1)
  })

  it.each([
    ['17, Bangkok in April', 13.7333, 105, 38.06, 12.31],
    ['18, Uccle on 6 July', 50.8, 187, 41.09, 16.1],
  ])('FAO-56 example %s', (_, latitudeDeg, dayOfYear, radiation, hours) => {
    expect(Math.abs(extraterrestrialMjPerM2(latitudeDeg, dayOfYear) - radiation)).toBeLessThan(0.03)
    expect(Math.abs(daylightHours(latitudeDeg, dayOfYear) - hours)).toBeLessThan(0.05)
  })

  it.each(Object.entries(fao.table26))('FAO-56 table 2.6, row %s°', (latitude, row) => {
    row.forEach((printed, month) =>
      expect(
        Math.abs(extraterrestrialMjPerM2(Number(latitude), fao.dayOf15th[month]!) - printed),
      ).toBeLessThan(0.21),
    )
  })

  it.each(Object.entries(fao.table27))('FAO-56 table 2.7, row %s°', (latitude, row) => {
    row.forEach((printed, month) =>
      expect(Math.abs(daylightHours(Number(latitude), fao.dayOf15th[month]!) - printed)).toBeLessThan(0.11),
    )
  })

  it('Duffie & Beckman example 1.10.1: 33.8 MJ/m² at 43° north on 15 April', () => {
    expect(extraterrestrialMjPerM2(43, 105)).toBeCloseTo(33.8, 0)
  })

  it('common practice, no source: no sun in polar night, 24 hours in polar day', () => {
    expect(extraterrestrialMjPerM2(80, 355)).toBeCloseTo(0, 10)
    expect(daylightHours(80, 355)).toBe(0)
    expect(daylightHours(80, 172)).toBe(24)
    expect(daylightHours(0, 10)).toBeCloseTo(12, 10)
  })

  it('refuses places off the globe and days out of the year', () => {
    expect(() => extraterrestrialMjPerM2(91, 100)).toThrow(/latitude \[°\] must be from -90 to 90, got 91/)
    expect(() => daylightHours(50, 400)).toThrow(RangeError)
  })
})

describe('clearnessFromTemperature', () => {
  it('FAO-56 example 15: Lyon in July, 26.6 and 14.8 °C, 40.6 MJ/m² above the air: 22.3 MJ/m²', () => {
    expect(clearnessFromTemperature(26.6 - 14.8, false, 200).ofAboveAir * 40.6).toBeCloseTo(22.3, 1)
  })

  it.each([
    ['10, Rio', 25.1, 0, 18.8],
    ['17, Bangkok', 38.06, 2, 28.54],
    ['18, Uccle', 41.09, 100, 30.9],
    ['20, Lyon', 40.55, 200, 30.58],
  ])('FAO-56 example %s: radiation of a clear sky', (_, aboveAir, elevationM, clear) => {
    expect(Math.abs(clearSkyShare(elevationM) * aboveAir - clear)).toBeLessThan(0.05)
  })

  it('FAO-56 eq. 50: the coast is clearer for the same span, and a clear sky is the limit', () => {
    expect(clearnessFromTemperature(9, true, 0).ofAboveAir).toBeCloseTo(0.57, 10)
    expect(clearnessFromTemperature(9, false, 0).ofAboveAir).toBeCloseTo(0.48, 10)
    expect(clearnessFromTemperature(40, true, 0)).toEqual({ ofAboveAir: 0.75, ofClearSky: 1 })
    expect(() => clearnessFromTemperature(-1, true, 0)).toThrow(RangeError)
  })
})

describe('clearnessFromSunshine', () => {
  it.each([
    [
      '10: Rio, 220 h in May, a day of 10.9 h and 25.1 MJ/m² above the air: 14.5 MJ/m²',
      7.1,
      10.9,
      0,
      25.1,
      14.5,
    ],
    [
      '18: Uccle on 6 July, 9.25 h of 16.1 h and 41.09 MJ/m² above the air: 22.07 MJ/m² (memory)',
      9.25,
      16.1,
      100,
      41.09,
      22.07,
    ],
  ])('FAO-56 example %s', (_, sunshine, day, elevationM, aboveAir, radiation) => {
    const { ofAboveAir } = clearnessFromSunshine(sunshine, day, elevationM)
    expect(Math.abs(ofAboveAir * aboveAir - radiation)).toBeLessThan(0.06)
  })

  it('FAO-56 eq. 35: a quarter comes through without sunshine, three quarters with nothing but sunshine', () => {
    expect(clearnessFromSunshine(0, 12, 0).ofAboveAir).toBe(0.25)
    expect(clearnessFromSunshine(12, 12, 0)).toEqual({ ofAboveAir: 0.75, ofClearSky: 1 })
    // FAO-56 eq. 37: at 500 m a clear sky lets 0.76 through, which eq. 35 does not reach.
    expect(clearnessFromSunshine(12, 12, 500).ofClearSky).toBeCloseTo(0.75 / 0.76, 10)
  })

  it('refuses sunshine that is none and days without length', () => {
    expect(() => clearnessFromSunshine(25, 12, 0)).toThrow(/sunshine \[h\] must be 0 to 24, got 25/)
    expect(() => clearnessFromSunshine(1, 0, 0)).toThrow(/day \[h\] must be above 0 to 24, got 0/)
  })
})

describe('diffuseShare', () => {
  it('Duffie & Beckman example 2.12.1 (Erbs, Klein & Duffie 1982): Madison in June, clearness 0.55, 0.38 diffuse', () => {
    expect(diffuseShare(0.551, daylightHours(43, 162))).toBeCloseTo(0.38, 2)
  })

  it('refuses a clearness that is none', () => {
    expect(() => diffuseShare(1.2, 12)).toThrow(RangeError)
    expect(() => diffuseShare(NaN, 12)).toThrow(RangeError)
  })
})
