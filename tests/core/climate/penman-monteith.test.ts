import { describe, expect, it } from 'vitest'
import {
  meanSaturationKPa,
  pressureKPa,
  psychrometricKPaPerC,
  saturationKPa,
  saturationRiseKPaPerC,
} from '../../../src/core/climate/air'
import { hargreavesMmPerDay } from '../../../src/core/climate/hargreaves-et'
import { keptSunlightMjPerM2, netLongwaveMjPerM2 } from '../../../src/core/climate/net-radiation'
import { penmanMonteithMmPerDay, type DrawingWeather } from '../../../src/core/climate/penman-monteith'
import { clearSkyShare } from '../../../src/core/climate/clear-sky-share'
import { extraterrestrialMjPerM2 } from '../../../src/core/climate/extraterrestrial'
import { representativeDays } from '#core/sun'
import { readTruth } from './read-truth'

const { cabinda } = readTruth<{
  cabinda: {
    latitudeDeg: number
    elevationM: number
    months: Record<
      'month' | 'tMinC' | 'tMaxC' | 'humidityPercent' | 'windKmPerDay' | 'solarMjPerM2' | 'etMmPerDay',
      number
    >[]
  }
}>('fao-56-climate')

describe('the air', () => {
  it('FAO-56 example 2: 81.8 kPa and 0.054 kPa/°C at 1800 m', () => {
    expect(pressureKPa(1800)).toBeCloseTo(81.8, 1)
    expect(psychrometricKPaPerC(pressureKPa(1800))).toBeCloseTo(0.054, 3)
  })

  it('FAO-56 example 3: 3.075 kPa at 24.5 °C, 1.705 at 15 °C, mean 2.39', () => {
    expect(saturationKPa(24.5)).toBeCloseTo(3.075, 3)
    expect(saturationKPa(15)).toBeCloseTo(1.705, 3)
    expect(meanSaturationKPa(15, 24.5)).toBeCloseTo(2.39, 2)
  })

  it.each([
    ['17', 30.2, 0.246],
    ['18', 16.9, 0.122],
  ])('FAO-56 example %s: rise of saturation at %s °C is %s kPa/°C', (_, temperatureC, rise) => {
    expect(saturationRiseKPaPerC(temperatureC)).toBeCloseTo(rise, 3)
  })
})

describe('netLongwaveMjPerM2', () => {
  it.each([
    ['11, Rio in May', 19.1, 25.1, 2.1, 14.5 / 18.8, 3.5, 0.05],
    ['17, Bangkok', 25.6, 34.8, 2.85, 22.65 / 28.54, 3.11, 0.03],
    ['18, Uccle', 12.3, 21.5, 1.409, 22.07 / 30.9, 3.71, 0.03],
    ['20, Lyon', 14.8, 26.6, 1.68, 22.29 / 30.58, 3.68, 0.03],
  ])('FAO-56 example %s', (...row) => {
    const [, tMinC, tMaxC, vapourKPa, clearSkyRatio, printed, within] = row
    expect(Math.abs(netLongwaveMjPerM2({ tMinC, tMaxC, vapourKPa, clearSkyRatio }) - printed)).toBeLessThan(
      within,
    )
  })
})

describe('penmanMonteithMmPerDay', () => {
  const bangkok: DrawingWeather = {
    tMinC: 25.6,
    tMaxC: 34.8,
    tMeanC: 30.2,
    windMPerS: 2,
    vapourKPa: 2.85,
    pressureKPa: pressureKPa(2),
    netRadiationMjPerM2: 14.33,
    soilHeatMjPerM2: 0.14,
  }
  const uccle: DrawingWeather = {
    tMinC: 12.3,
    tMaxC: 21.5,
    tMeanC: 16.9,
    windMPerS: 2.078,
    vapourKPa: 1.409,
    pressureKPa: pressureKPa(100),
    netRadiationMjPerM2: 13.28,
    soilHeatMjPerM2: 0,
  }
  const lyon: DrawingWeather = {
    tMinC: 14.8,
    tMaxC: 26.6,
    tMeanC: 20.7,
    windMPerS: 2,
    vapourKPa: 1.68,
    pressureKPa: pressureKPa(200),
    netRadiationMjPerM2: 13.48,
    soilHeatMjPerM2: 0,
  }

  it.each([
    ['17, Bangkok in April', bangkok, 5.72, 0.03],
    ['18, Uccle on 6 July', uccle, 3.88, 0.03],
    ['20, Lyon in July', lyon, 4.56, 0.03],
    ['20, Lyon with wind of 1 m/s', { ...lyon, windMPerS: 1 }, 4.2, 0.05],
    ['20, Lyon with wind of 3 m/s', { ...lyon, windMPerS: 3 }, 4.8, 0.05],
  ])('FAO-56 example %s', (_, weather, printed, within) => {
    expect(Math.abs(penmanMonteithMmPerDay(weather) - printed)).toBeLessThan(within)
  })

  it.each(cabinda.months)('FAO-56 figure 18: Cabinda, month $month, $etMmPerDay mm/d', (row) => {
    const { tMinC, tMaxC, solarMjPerM2 } = row
    const aboveAir = extraterrestrialMjPerM2(cabinda.latitudeDeg, representativeDays[(row.month - 1) as 0])
    const vapourKPa = (row.humidityPercent / 100) * meanSaturationKPa(tMinC, tMaxC)
    const clearSkyRatio = Math.min(1, solarMjPerM2 / (clearSkyShare(cabinda.elevationM) * aboveAir))
    const et = penmanMonteithMmPerDay({
      tMinC,
      tMaxC,
      tMeanC: (tMinC + tMaxC) / 2,
      windMPerS: (row.windKmPerDay * 1000) / 86400,
      vapourKPa,
      pressureKPa: pressureKPa(cabinda.elevationM),
      netRadiationMjPerM2:
        keptSunlightMjPerM2(solarMjPerM2) - netLongwaveMjPerM2({ tMinC, tMaxC, vapourKPa, clearSkyRatio }),
      soilHeatMjPerM2: 0,
    })
    expect(Math.abs(et - row.etMmPerDay)).toBeLessThan(0.2)
  })

  it('FAO-56 eq. 6: never below 0, as dew is not counted', () => {
    expect(penmanMonteithMmPerDay({ ...uccle, netRadiationMjPerM2: -5, vapourKPa: 1.99 })).toBe(0)
  })
})

describe('hargreavesMmPerDay', () => {
  it('FAO-56 example 20: 5.0 mm/d for Lyon in July', () => {
    expect(hargreavesMmPerDay(14.8, 26.6, 40.55)).toBeCloseTo(5, 1)
  })

  it('gives nothing in hard frost and refuses swapped temperatures', () => {
    expect(hargreavesMmPerDay(-40, -30, 5)).toBe(0)
    expect(() => hargreavesMmPerDay(20, 10, 5)).toThrow(RangeError)
  })
})
