import { describe, expect, it } from 'vitest'
import { months } from '#core/units'
import { representativeDays } from '#core/sun'
import { diffuseShare } from '../../../src/core/climate/diffuse-share'
import { daylightHours, extraterrestrialMjPerM2 } from '../../../src/core/climate/extraterrestrial'
import { clearnessFromTemperature, clearSkyShare } from '../../../src/core/climate/solar-from-temperature'
import { realSkyRatio } from '../../../src/core/climate/sun-ratios'
import { readTruth } from './read-truth'

const fao = readTruth<{
  dayOf15th: number[]
  table26: Record<string, number[]>
  table27: Record<string, number[]>
}>('fao-56-climate')
const madison =
  readTruth<Record<'levelMjPerM2' | 'groundAlbedo' | 'beamRatio' | 'slopeMjPerM2', number[]>>(
    'climate-madison',
  )

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

describe('diffuseShare and realSkyRatio', () => {
  it('Duffie & Beckman example 2.12.1 (Erbs, Klein & Duffie 1982): Madison in June, clearness 0.55, 0.38 diffuse', () => {
    expect(diffuseShare(0.551, daylightHours(43, 162))).toBeCloseTo(0.38, 2)
  })

  it('Duffie & Beckman example 2.15.1 (isotropic sky of Liu & Jordan 1963): 1.17 of 1.04 MJ/m²', () => {
    const skyView = (1 + Math.cos(Math.PI / 3)) / 2
    const ratio = realSkyRatio({ beamRatio: 1.713, diffuseShare: 0.7655, skyView, albedo: 0.6 })
    expect(ratio * 1.04).toBeCloseTo(1.17, 2)
  })

  it.each(months)(
    'Duffie & Beckman example 2.20.1 (Erbs, Klein & Duffie 1982; isotropic sky), Madison, month %s',
    (month) => {
      const day = representativeDays[month]
      const level = madison.levelMjPerM2[month]!
      const share = diffuseShare(level / extraterrestrialMjPerM2(43, day), daylightHours(43, day))
      const ratio = realSkyRatio({
        beamRatio: madison.beamRatio[month]!,
        diffuseShare: share,
        skyView: 0.75,
        albedo: madison.groundAlbedo[month]!,
      })
      expect(Math.abs(ratio * level - madison.slopeMjPerM2[month]!)).toBeLessThan(0.15)
    },
  )

  it('pvlib test vectors, isotropic sky: 100 W/m² diffuse on 40° is 88.3022, 900 W/m² reflected at 0.25 is 26.32', () => {
    const skyView = (1 + Math.cos((40 * Math.PI) / 180)) / 2
    const dark = realSkyRatio({ beamRatio: 0, diffuseShare: 1, skyView, albedo: 0 })
    expect(100 * dark).toBeCloseTo(88.30222215594891, 8)
    const bright = realSkyRatio({ beamRatio: 0, diffuseShare: 1, skyView, albedo: 0.25 })
    expect(900 * (bright - dark)).toBeCloseTo(26.32000014911496, 4)
  })

  it('refuses a clearness that is none', () => {
    expect(() => diffuseShare(1.2, 12)).toThrow(RangeError)
    expect(() => diffuseShare(NaN, 12)).toThrow(RangeError)
  })
})
