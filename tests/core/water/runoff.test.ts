import { describe, expect, it } from 'vitest'
import { gradientToDeg } from '#core/units'
import { dryCurveNumber, slopedCurveNumber, wetCurveNumber } from '../../../src/core/water/curve-number'
import { retentionByWetness } from '../../../src/core/water/retention-by-wetness'
import { retentionMm, runoffMm } from '../../../src/core/water/runoff'
import { truth, waterTables } from './water-fixtures'

/** Millimetres in an inch [mm/in]. */
const MM_PER_IN = 25.4
/** The table prints hundredths of an inch [in]. */
const HUNDREDTH_IN = 0.006

interface Groups {
  A: number
  B: number
  C: number
  D: number
}
const tr55 = truth<{
  runoff: { P_in: number; CN: number; expected: { Q_in: number } }[]
  initialAbstraction: { CN: number; expected: { Ia_in: number } }[]
  covers: { cover: string; expected: Groups }[]
  example: {
    P_in: number
    area_C_acres: number
    area_B_acres: number
    expected: { CN: number; Q_in: number }
  }[]
}>('water-tr-55')
const curve = truth<{
  moisture: { CN2: number; expected: { CN1: number; CN3: number } }[]
  slope: { CN2: number; slope_frac: number; expected: { CN2s: number } }[]
}>('water-curve-number')

const runoffIn = (rainIn: number, curveNumber: number) =>
  runoffMm(rainIn * MM_PER_IN, retentionMm(curveNumber)) / MM_PER_IN

describe('runoff', () => {
  it.each(tr55.runoff)('TR-55 table 2-1: $P_in in on curve number $CN', ({ P_in, CN, expected }) => {
    expect(Math.abs(runoffIn(P_in, CN) - expected.Q_in)).toBeLessThan(HUNDREDTH_IN)
  })

  it.each(tr55.initialAbstraction)(
    'TR-55 table 4-1: on curve number $CN nothing runs before $expected.Ia_in in have fallen',
    ({ CN, expected }) => {
      expect(runoffIn(expected.Ia_in - 0.002, CN)).toBe(0)
      expect(runoffIn(expected.Ia_in + 0.02, CN)).toBeGreaterThan(0)
    },
  )

  it('TR-55 example 2-1: pasture on two soils, 6 in of rain', () => {
    for (const { P_in, area_C_acres, area_B_acres, expected } of tr55.example) {
      const pasture = tr55.covers.find((row) => row.cover === 'pasture good')?.expected
      const mixed =
        ((pasture?.C ?? 0) * area_C_acres + (pasture?.B ?? 0) * area_B_acres) / (area_C_acres + area_B_acres)
      expect(Math.round(mixed)).toBe(expected.CN)
      expect(Math.abs(runoffIn(P_in, expected.CN) - expected.Q_in)).toBeLessThan(0.01)
    }
  })

  it.each([
    ['bare', 'newly graded, no vegetation'],
    ['mown', 'open space good (>75%)'],
    ['meadow', 'meadow'],
    ['ground-cover', 'pasture good'],
    ['shrubs', 'brush good'],
    ['trees', 'woods good'],
    ['terrace', 'meadow'],
    ['left', 'brush fair'],
  ])('TR-55 tables 2-2a and 2-2c: %s stands as %s', (cover, name) => {
    const row = waterTables.curveNumbers.find((one) => one.cover === cover)
    const printed = tr55.covers.find((one) => one.cover === name)?.expected
    expect(row && { A: row.A, B: row.B, C: row.C, D: row.D }).toEqual(printed)
  })

  it('refuses curve numbers, water and retention that can not be', () => {
    expect(() => retentionMm(0)).toThrow(RangeError)
    expect(() => retentionMm(101)).toThrow(RangeError)
    expect(() => runoffMm(-1, 10)).toThrow(RangeError)
  })
})

describe('curve number by wetness and slope', () => {
  it.each(curve.moisture)(
    'SWAT 2009 eqs 2:1.1.4-5, worked separately: $CN2 dry and wet',
    ({ CN2, expected }) => {
      expect(Math.abs(dryCurveNumber(CN2) - expected.CN1)).toBeLessThan(0.02)
      expect(Math.abs(wetCurveNumber(CN2) - expected.CN3)).toBeLessThan(0.02)
    },
  )

  it.each(curve.slope)(
    'Williams 1995, worked separately: curve number $CN2 at $slope_frac m/m',
    ({ CN2, slope_frac, expected }) => {
      expect(Math.abs(slopedCurveNumber(CN2, gradientToDeg(slope_frac)) - expected.CN2s)).toBeLessThan(0.02)
    },
  )

  it('SWAT 2009 eqs 2:1.1.6-8: retention is that of the wet curve number at field capacity and 2.54 mm when full', () => {
    const kept = retentionByWetness(74, 80, 150)
    expect(kept(0)).toBeCloseTo(retentionMm(dryCurveNumber(74)), 8)
    expect(kept(80)).toBeCloseTo(retentionMm(wetCurveNumber(74)), 8)
    expect(kept(150)).toBeCloseTo(2.54, 8)
    for (let waterMm = 1; waterMm <= 150; waterMm++) expect(kept(waterMm)).toBeLessThan(kept(waterMm - 1))
  })

  it('refuses what lies outside the range', () => {
    expect(() => dryCurveNumber(20)).toThrow(RangeError)
    expect(() => slopedCurveNumber(74, 90)).toThrow(RangeError)
    expect(() => retentionByWetness(74, 80, 70)).toThrow(RangeError)
  })
})
