import { describe, expect, it } from 'vitest'
import { seasonWeights } from '#core/zones'
import { daysInMonth, eachMonth, months } from '#core/units'

/** Radiation above the air at 50° north [MJ/m² a day]: FAO-56 (Allen et al. 1998), table 2.6. */
const NORTH_50 = [8.9, 14.4, 22.2, 31.5, 38.5, 41.7, 40.2, 34.4, 25.7, 16.9, 10.2, 7.5]

const openLevel = eachMonth((month) => ({ usualWhPerM2: NORTH_50[month]! }))
const growingIn = (from: number, to: number) =>
  eachMonth((month) => ({ growing: month >= from && month <= to }))

describe('seasonWeights', () => {
  it('FAO-56 table 2.6, 50° north, April to September: the weighted mean of ratios is the ratio of totals', () => {
    const ratios = eachMonth((month) => 0.4 + 0.1 * month)
    const season = seasonWeights(growingIn(3, 8), openLevel)
    const counted = months.filter((month) => month >= 3 && month <= 8)
    const total = (of: (month: (typeof months)[number]) => number) =>
      counted.reduce<number>((sum, month) => sum + of(month) * daysInMonth[month], 0)
    const exact = total((month) => NORTH_50[month]! * ratios[month]) / total((month) => NORTH_50[month]!)
    const weighted = months.reduce<number>((sum, month) => sum + season[month] * ratios[month], 0)
    expect(weighted).toBeCloseTo(exact, 12)
    expect(season[0]).toBe(0)
    expect(season[5]).toBeGreaterThan(season[8])
  })

  it('a place where nothing grows is judged by the whole year, and one without light by months alike', () => {
    const whole = seasonWeights(growingIn(12, 12), openLevel)
    expect(whole.every((weight) => weight > 0)).toBe(true)
    expect(whole.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 12)
    const dark = eachMonth(() => ({ usualWhPerM2: 0 }))
    expect(seasonWeights(growingIn(5, 6), dark)[5]).toBe(1 / 2)
  })
})
