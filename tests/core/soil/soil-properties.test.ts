import { describe, expect, it } from 'vitest'
import {
  coarseTexture,
  describeSoil,
  erodibility,
  soilProblems,
  soilProperties,
  textureClasses,
  type TextureClass,
} from '#core/soil'
import { hydrologicGroup } from '../../../src/core/soil/hydrologic-group'
import { pit, soilTables, truth } from './soil-tables'

const groups = truth<{
  byConductivity: {
    depth_to_impermeable_cm: number
    depth_to_watertable_cm: number
    min_ksat_um_s: number
    expected: { hsg: string }
  }[]
  byTexture: { texture: TextureClass; expected: { hsg: string } }[]
}>('soil-hydrologic-group')

const lost = truth<{
  rows: {
    texture: TextureClass
    expected: { K_om_lt_0_5: number; K_om_2: number; K_om_4: number }
  }[]
  units: { expected: { K_si: number } }[]
}>('soil-erodibility')

describe('hydrologic group', () => {
  // A water table is not asked of the person: rows with one within 1 m do not apply.
  it.each(groups.byConductivity.filter((row) => row.depth_to_watertable_cm > 100))(
    'NEH 630 table 7-1: $min_ksat_um_s µm/s over $depth_to_impermeable_cm cm is $expected.hsg',
    ({ min_ksat_um_s, depth_to_impermeable_cm, expected }) => {
      expect(hydrologicGroup(min_ksat_um_s * 3.6, depth_to_impermeable_cm / 100)).toBe(expected.hsg)
    },
  )

  it.each(groups.byTexture)(
    'TR-55 appendix A: deep normal $texture is group $expected.hsg or one letter off',
    ({ texture, expected }) => {
      const { hydrologicGroup: group } = soilProperties(pit({ by: 'class', class: texture }), soilTables)
      // The list is for disturbed ground; clay loam, silty clay loam and silty clay come out C, not D.
      const looser = ['clay loam', 'silty clay loam', 'silty clay'].includes(texture)
      expect(group).toBe(looser ? 'C' : expected.hsg)
    },
  )

  it('refuses a depth of nothing', () => {
    expect(() => hydrologicGroup(10, 0)).toThrow(RangeError)
    expect(() => hydrologicGroup(-1, 1)).toThrow(RangeError)
  })
})

describe('soil properties', () => {
  it('Saxton & Rawls 2006 Table 3: a metre of loam holds 14 % of its depth for plants', () => {
    const soil = soilProperties(pit({ by: 'class', class: 'loam' }), soilTables)
    expect(soil.availableWaterMm / 10).toBeCloseTo(14, 0)
    expect(soil.siltPercent).toBe(40)
  })

  it('reads a soil by feel, by jar and by per cent', () => {
    const byFeel = soilProperties(pit({ by: 'feel', ball: true, ribbonCm: 6, feel: 'neither' }), soilTables)
    expect(byFeel.textureClass).toBe('clay')
    const byJar = soilProperties(pit({ by: 'jar', sandMm: 30, siltMm: 25, clayMm: 15 }), soilTables)
    expect(byJar.textureClass).toBe('loam')
    expect(byJar.sandPercent + byJar.siltPercent + byJar.clayPercent).toBeCloseTo(100, 10)
    const byPercent = soilProperties(
      pit({ by: 'percent', sandPercent: 40, siltPercent: 40, clayPercent: 19 }),
      soilTables,
    )
    expect(byPercent.sandPercent + byPercent.siltPercent + byPercent.clayPercent).toBeCloseTo(100, 10)
  })

  it('common practice, no source: loose ground lets more water through than compacted ground', () => {
    for (const name of textureClasses) {
      const speed = (compaction: 'loose' | 'normal' | 'compacted') =>
        soilProperties(pit({ by: 'class', class: name }, { compaction }), soilTables).conductivityMmPerH
      expect(speed('loose')).toBeGreaterThan(speed('normal'))
      expect(speed('normal')).toBeGreaterThan(speed('compacted'))
    }
  })

  it('takes clay beyond the equations as 60 %, and says so', () => {
    const heavy = pit({ by: 'percent', sandPercent: 10, siltPercent: 10, clayPercent: 80 })
    const edge = pit({ by: 'percent', sandPercent: 20, siltPercent: 20, clayPercent: 60 })
    expect(soilProperties(heavy, soilTables).fieldCapacity).toBeCloseTo(
      soilProperties(edge, soilTables).fieldCapacity,
      10,
    )
    expect(soilProblems(heavy, 'soil.0')).toHaveLength(1)
    expect(soilProblems(edge, 'soil.0')).toHaveLength(0)
    const pure = pit({ by: 'percent', sandPercent: 0, siltPercent: 0, clayPercent: 100 })
    expect(soilProperties(pure, soilTables).fieldCapacity).toBeGreaterThan(0)
  })
})

describe('what does not make sense', () => {
  const problemsOf = (texture: Parameters<typeof pit>[0]) => soilProblems(pit(texture), 'soil.0')

  it('says nothing about a good sample', () => {
    expect(problemsOf({ by: 'class', class: 'loam' })).toEqual([])
    expect(problemsOf({ by: 'feel', ball: true, ribbonCm: 3, feel: 'gritty' })).toEqual([])
    expect(problemsOf({ by: 'feel', ball: false, ribbonCm: 0, feel: 'gritty' })).toEqual([])
    expect(problemsOf({ by: 'jar', sandMm: 30, siltMm: 25, clayMm: 15 })).toEqual([])
  })

  it.each([
    ['a ribbon without a ball', { by: 'feel', ball: false, ribbonCm: 3, feel: 'gritty' }, 'ribbon of 3 cm'],
    ['an empty jar', { by: 'jar', sandMm: 0, siltMm: 0, clayMm: 0 }, 'layers of the jar are 0 mm'],
    ['a thin jar', { by: 'jar', sandMm: 5, siltMm: 4, clayMm: 3 }, 'only 12 mm thick'],
    ['a jar not yet clear', { by: 'jar', sandMm: 30, siltMm: 25, clayMm: 0 }, 'no clay at all'],
    ['one layer only', { by: 'jar', sandMm: 99, siltMm: 1, clayMm: 0 }, 'one layer'],
  ] as const)('finds %s', (_, texture, words) => {
    const problems = problemsOf(texture)
    expect(problems).toHaveLength(1)
    expect(problems[0]?.what).toContain(words)
    expect(problems[0]?.where).toBe('soil.0.texture')
    expect(problems[0]?.mend).not.toBe('')
  })
})

describe('erodibility', () => {
  const si = lost.units[0]?.expected.K_si ?? Number.NaN

  it.each(lost.rows)(
    'Stewart et al. 1975, in the units of AH-703: K of $texture',
    ({ texture, expected }) => {
      const k = (organicPercent: number) => erodibility(texture, organicPercent, soilTables)
      expect(k(0.5)).toBeCloseTo(expected.K_om_lt_0_5 * si, 6)
      expect(k(2)).toBeCloseTo(expected.K_om_2 * si, 6)
      expect(k(4)).toBeCloseTo(expected.K_om_4 * si, 6)
      expect(k(3)).toBeCloseTo(((expected.K_om_2 + expected.K_om_4) / 2) * si, 6)
      expect(k(8)).toBe(k(4))
      expect(k(0)).toBe(k(0.5))
    },
  )

  it('refuses organic matter beyond the range', () => {
    expect(() => erodibility('loam', 9, soilTables)).toThrow(RangeError)
  })
})

describe('words', () => {
  it('puts a soil in a gardener’s words', () => {
    const clay = soilProperties(pit({ by: 'class', class: 'clay' }, { depthM: 0.6 }), soilTables)
    expect(describeSoil(clay, soilTables)).toMatch(
      /^Clay, 0\.6 m deep: holds \d+ mm for plants; drains very slowly; very sticky when wet/,
    )
    const sand = soilProperties(pit({ by: 'class', class: 'sand' }), soilTables)
    expect(describeSoil(sand, soilTables)).toContain('drains fast')
    const loam = soilProperties(pit({ by: 'class', class: 'loam' }), soilTables)
    expect(describeSoil(loam, soilTables)).toContain('Loam (clay loam to a British survey), 1 m deep')
  })

  it('common practice, no source: every class is sand, loam or clay to a plant list', () => {
    expect(coarseTexture('loamy sand', soilTables)).toBe('sand')
    expect(coarseTexture('silt loam', soilTables)).toBe('loam')
    expect(coarseTexture('silty clay', soilTables)).toBe('clay')
  })

  it('refuses a table without the class', () => {
    expect(() => coarseTexture('clay', { ...soilTables, classes: [] })).toThrow(RangeError)
  })
})
