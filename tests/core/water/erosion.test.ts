import { describe, expect, it } from 'vitest'
import { gradientToDeg, type Twelve } from '#core/units'
import { erodibility } from '#core/soil'
import { coverFactor, soilLoss } from '#core/water'
import { rainErosivity } from '../../../src/core/water/rain-erosivity'
import { slopeFactor } from '../../../src/core/water/slope-factor'
import { soilTables } from '../soil/soil-tables'
import { climate, soilOf, truth, waterTables } from './water-fixtures'

interface Slope {
  slope_pct: number
  length_ft: number
  expected: { LS: number }
}
const { ls, lsShort, cover, tolerable } = truth<{
  ls: Slope[]
  lsShort: Slope[]
  cover: { cover_pct: number; expected: { C: number } }[]
  tolerable: { expected: { T_min_t_ac: number; T_max_t_ac: number } }[]
}>('water-erosion')

/** Metres in a foot [m/ft]. */
const M_PER_FT = 0.3048
/** The table prints hundredths [-]. */
const HUNDREDTH = 0.011
/** Tonnes a hectare in a short ton an acre: AH-703. */
const T_PER_HA = 2.242

const factor = ({ slope_pct, length_ft }: Slope) =>
  slopeFactor(length_ft * M_PER_FT, gradientToDeg(slope_pct / 100))

describe('slope factor', () => {
  it.each(ls)('AH-703, moderate rill ratio: $slope_pct % over $length_ft ft is $expected.LS', (row) => {
    expect(Math.abs(factor(row) - row.expected.LS)).toBeLessThan(HUNDREDTH)
  })

  it.each(lsShort)('AH-703, short slopes: $slope_pct % over $length_ft ft is $expected.LS', (row) => {
    expect(Math.abs(factor(row) - row.expected.LS)).toBeLessThan(HUNDREDTH)
  })

  it('grows with length and steepness, and has no step at 4.6 m', () => {
    for (const slopeDeg of [2, 8, 20, 40]) {
      for (let lengthM = 1; lengthM < 40; lengthM++)
        expect(slopeFactor(lengthM + 1, slopeDeg)).toBeGreaterThanOrEqual(slopeFactor(lengthM, slopeDeg))
      expect(slopeFactor(4.572 - 1e-9, slopeDeg)).toBeCloseTo(slopeFactor(4.572, slopeDeg), 6)
    }
  })

  it('refuses slopes that can not be', () => {
    expect(() => slopeFactor(0, 5)).toThrow(RangeError)
    expect(() => slopeFactor(5, 90)).toThrow(RangeError)
  })
})

describe('rain and cover', () => {
  it('Renard & Freimund 1994 (from memory): even rain of 50 mm a month has a concentration of 50 mm', () => {
    const even: Twelve<number> = [50, 50, 50, 50, 50, 50, 50, 50, 50, 50, 50, 50]
    expect(rainErosivity(even)).toBeCloseTo(0.07397 * 50 ** 1.847, 8)
    const heavy: Twelve<number> = [100, 100, 100, 100, 100, 100, 100, 100, 100, 100, 100, 100]
    expect(rainErosivity(heavy)).toBeCloseTo(95.77 - 608.1 + 4770, 8)
    expect(rainErosivity([0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0])).toBe(0)
    expect(() => rainErosivity([-1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0])).toThrow(RangeError)
  })

  it.each(cover)(
    'AH-537 table 10: $cover_pct % of close cover leaves $expected.C',
    ({ cover_pct, expected }) => {
      expect(coverFactor(cover_pct, waterTables)).toBe(expected.C)
    },
  )

  it('runs straight between rows and refuses what lies beyond', () => {
    expect(coverFactor(15, waterTables)).toBeCloseTo((0.33 + 0.2) / 2, 10)
    expect(() => coverFactor(-1, waterTables)).toThrow(RangeError)
    expect(() => coverFactor(101, waterTables)).toThrow(RangeError)
  })
})

describe('soil loss', () => {
  const ground = {
    soil: soilOf('silt loam'),
    lengthM: 20,
    slopeDeg: 14,
    rainMm: climate('temperate north').rainMm,
  }

  it('AH-703: A = R K LS C P, in tonnes and in millimetres', () => {
    const [bare] = soilLoss(ground, soilTables, waterTables)
    const expected =
      rainErosivity(ground.rainMm) * erodibility('silt loam', 2.5, soilTables) * slopeFactor(20, 14)
    expect(bare?.tPerHaYear).toBeCloseTo(expected, 8)
    // Silt loam weighs 1.38 t/m³ (Saxton & Rawls 2006 table 3): 13.8 t on a hectare is 1 mm.
    expect((bare?.tPerHaYear ?? 0) / (bare?.mmPerYear ?? 1)).toBeCloseTo(13.8, 1)
  })

  it('common practice, no source: cover saves soil; bare silt on a bank loses more than any soil makes up', () => {
    const [bare, establishing, covered] = soilLoss(ground, soilTables, waterTables)
    expect(bare?.tPerHaYear).toBeGreaterThan(establishing?.tPerHaYear ?? Infinity)
    expect(establishing?.tPerHaYear).toBeGreaterThan(covered?.tPerHaYear ?? Infinity)
    const mostMadeUp = (tolerable[0]?.expected.T_max_t_ac ?? 0) * T_PER_HA
    expect(bare?.tPerHaYear).toBeGreaterThan(mostMadeUp)
    expect(covered?.tPerHaYear).toBeLessThan(mostMadeUp)
  })
})
