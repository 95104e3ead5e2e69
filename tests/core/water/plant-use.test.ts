import { describe, expect, it } from 'vitest'
import { easyShareAt, plantUseMm, stressCoefficient } from '../../../src/core/water/plant-use'
import { truth, waterTables } from './water-fixtures'

const fao56 = truth<{
  kc: { cover: string; expected: { kc_ini: number; kc_mid: number } }[]
  roots: { plant: string; expected: { zr_min_m: number; zr_max_m: number; p_at_ETc5: number } }[]
  example36: { zr: number; p: number; fc: number; wp: number; expected: { taw: number; raw: number } }[]
  example37: {
    taw: number
    raw: number
    etc: number
    Dr_start_day1: number
    day: number
    expected: { Ks: number; Dr_end: number }
  }[]
  example38: {
    day: number
    Dr_prev: number
    P_minus_RO: number
    irrigation: number
    ETc: number
    zr: number
    expected: { RAW: number; DP: number; Dr_end: number }
  }[]
  depletion: { p_table: number; etc: number; expected: { p: number } }[]
}>('water-fao-56')

describe('water that plants can take', () => {
  it.each(fao56.example36)(
    'FAO-56 example 36: roots of $zr m between $wp and $fc lack nothing until $expected.raw mm are gone',
    ({ zr, p, fc, wp, expected }) => {
      const holdsMm = 1000 * (fc - wp) * zr
      // The book prints whole millimetres.
      expect(Math.abs(holdsMm - expected.taw)).toBeLessThan(0.6)
      expect(Math.abs(p * holdsMm - expected.raw)).toBeLessThan(0.6)
      expect(stressCoefficient(p * holdsMm - 0.01, holdsMm, p)).toBe(1)
      expect(stressCoefficient(p * holdsMm + 0.1, holdsMm, p)).toBeLessThan(1)
    },
  )

  it('FAO-56 example 37: ten days without rain, by the stress of each day’s start', () => {
    const first = fao56.example37[0]
    if (!first) throw new Error('example 37 is missing')
    let missingMm = first.Dr_start_day1
    for (const { taw, raw, etc, expected } of fao56.example37) {
      const easyShare = raw / taw
      expect(Math.abs(stressCoefficient(missingMm, taw, easyShare) - expected.Ks)).toBeLessThan(0.006)
      missingMm += plantUseMm(taw - missingMm, taw, etc, easyShare)
      // The book rounds its coefficient day by day.
      expect(Math.abs(missingMm - expected.Dr_end)).toBeLessThan(0.11)
    }
  })

  it('FAO-56 example 38: ten days with water, excess draining before plants drink', () => {
    for (const { day, Dr_prev, P_minus_RO, irrigation, ETc, expected, zr } of fao56.example38) {
      const holdsMm = 1000 * (0.23 - 0.1) * zr
      const easyShare = Math.min(0.95, expected.RAW / holdsMm)
      const wetMm = holdsMm - Dr_prev + P_minus_RO + irrigation
      const drainedMm = Math.max(0, wetMm - holdsMm)
      const leftMm = wetMm - drainedMm
      const missingMm = holdsMm - (leftMm - plantUseMm(leftMm, holdsMm, ETc, easyShare))
      expect(Math.abs(drainedMm - expected.DP), `drained on day ${day}`).toBeLessThanOrEqual(1)
      expect(Math.abs(missingMm - expected.Dr_end), `missing after day ${day}`).toBeLessThanOrEqual(1)
    }
  })

  it.each(fao56.depletion)(
    'FAO-56 table 22, its adjustment worked separately: share $p_table at $etc mm a day',
    ({ p_table, etc, expected }) => {
      expect(easyShareAt(p_table, etc)).toBeCloseTo(expected.p, 3)
    },
  )

  it('FAO-56 tables 12, 17 and 22: coefficients and roots of the covers that name it', () => {
    const use = (cover: string) => waterTables.coverUse.find((row) => row.cover === cover)
    const kc = (name: string) => fao56.kc.find((row) => row.cover === name)?.expected
    const roots = (name: string) => fao56.roots.find((row) => row.plant === name)?.expected
    expect(use('mown')?.coefficient).toBe(kc('turf cool season')?.kc_mid)
    expect(use('mown')?.rootM).toBe(roots('turf cool season')?.zr_min_m)
    expect(use('mown')?.easyShare).toBe(roots('turf cool season')?.p_at_ETc5)
    expect(use('meadow')?.coefficient).toBe(kc('extensive pasture')?.kc_mid)
    expect(use('meadow')?.easyShare).toBe(roots('pasture')?.p_at_ETc5)
    expect(use('bare')?.coefficient).toBe(kc('extensive pasture')?.kc_ini)
    const conifers = roots('conifer trees')
    expect(use('trees')?.rootM).toBe(((conifers?.zr_min_m ?? 0) + (conifers?.zr_max_m ?? 0)) / 2)
    expect(use('trees')?.easyShare).toBe(conifers?.p_at_ETc5)
  })

  it('never takes more than there is, and more water never leaves less behind', () => {
    for (const holdsMm of [2, 10, 80])
      for (const demandMm of [0.5, 4, 9]) {
        let before = -1
        for (let waterMm = 0; waterMm <= 2 * holdsMm; waterMm += holdsMm / 50) {
          const left = waterMm - plantUseMm(waterMm, holdsMm, demandMm, 0.4)
          expect(left).toBeGreaterThanOrEqual(0)
          expect(left).toBeGreaterThanOrEqual(before)
          before = left
        }
      }
  })

  it('refuses what lies outside the range', () => {
    expect(() => stressCoefficient(90, 80, 0.4)).toThrow(RangeError)
    expect(() => easyShareAt(0.4, -1)).toThrow(RangeError)
  })
})
