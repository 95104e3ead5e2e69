import { describe, expect, it } from 'vitest'
import { textureClasses, type TextureClass } from '#core/soil'
import { textureClassOf } from '../../../src/core/soil/texture-class'
import { classByFeel } from '../../../src/core/soil/feel-test'
import { britishClassOf } from '../../../src/core/soil/british-class'
import { readJar } from '../../../src/core/soil/jar-test'
import { soilTables, truth } from './soil-tables'

interface Point {
  sand: number
  silt: number
  clay: number
  expected: { class: string }
}
const triangle = truth<{ points: Point[]; gridCount: Record<string, number> }>('soil-texture')
const feel = truth<{
  rows: {
    forms_ball: boolean
    ribbon_cm?: number
    feel?: 'gritty' | 'smooth' | 'neither'
    expected: { class: string }
  }[]
}>('soil-feel')

describe('texture class', () => {
  it('USDA texture triangle: the 5151 whole per cents fall into the classes as counted', () => {
    const counts: Record<string, number> = {}
    for (let sand = 0; sand <= 100; sand++)
      for (let clay = 0; sand + clay <= 100; clay++) {
        const found = textureClassOf(sand, 100 - sand - clay, clay)
        counts[found] = (counts[found] ?? 0) + 1
      }
    expect(counts).toEqual(triangle.gridCount)
  })

  it.each(triangle.points)(
    'USDA texture triangle: sand $sand, silt $silt, clay $clay is $expected.class',
    ({ sand, silt, clay, expected }) => {
      expect(textureClassOf(sand, silt, clay)).toBe(expected.class)
    },
  )

  it('USDA texture triangle: the shares that stand for a class lie inside it', () => {
    for (const row of soilTables.classes)
      expect(textureClassOf(row.sandPercent, 100 - row.sandPercent - row.clayPercent, row.clayPercent)).toBe(
        row.class,
      )
    expect(new Set(soilTables.classes.map((row) => row.class))).toEqual(new Set<TextureClass>(textureClasses))
  })

  it('takes shares that add up to 99 or 101 as 100', () => {
    expect(textureClassOf(39.6, 39.6, 19.8)).toBe('loam')
    expect(textureClassOf(45.45, 28.28, 27.27)).toBe('clay loam')
  })

  it.each([
    [-1, 51, 50],
    [40, 40, 10],
    [Number.NaN, 50, 50],
  ])('refuses %d, %d, %d', (sand, silt, clay) => {
    expect(() => textureClassOf(sand, silt, clay)).toThrow(RangeError)
  })
})

describe('British texture class', () => {
  const { points } = truth<{ points: Point[] }>('soil-texture-british')

  it.each(points)(
    'Soil Survey of England and Wales triangle: sand $sand, silt $silt, clay $clay is $expected.class',
    ({ sand, clay, expected }) => {
      expect(britishClassOf(sand, clay)).toBe(expected.class)
    },
  )

  it('refuses shares that can not be', () => {
    expect(() => britishClassOf(-1, 20)).toThrow(RangeError)
    expect(() => britishClassOf(80, 40)).toThrow(RangeError)
  })
})

describe('feel test', () => {
  it.each(feel.rows)(
    'Thien 1979: ball $forms_ball, ribbon $ribbon_cm cm, $feel is $expected.class',
    ({ forms_ball, ribbon_cm, feel: rub, expected }) => {
      expect(classByFeel({ ball: forms_ball, ribbonCm: ribbon_cm ?? 0, feel: rub ?? 'neither' })).toBe(
        expected.class,
      )
    },
  )

  it('Thien 1979: ribbons of exactly 2.5 cm and 5 cm belong to the longer kind', () => {
    expect(classByFeel({ ball: true, ribbonCm: 2.5, feel: 'neither' })).toBe('clay loam')
    expect(classByFeel({ ball: true, ribbonCm: 5, feel: 'neither' })).toBe('clay')
  })

  it('refuses a ribbon below nothing', () => {
    expect(() => classByFeel({ ball: true, ribbonCm: -1, feel: 'neither' })).toThrow(RangeError)
  })
})

describe('jar test', () => {
  const { example, stokes } = truth<{
    example: {
      depth_sand_mm: number
      depth_sand_silt_mm: number
      depth_total_mm: number
      expected: { sand_pct: number; silt_pct: number; clay_pct: number }
    }
    stokes: { d_um: number; fall_m: number; expected: { seconds: number } }[]
  }>('soil-jar')

  it('layer over total thickness: 30, 55 and 70 mm from the bottom give 42.9, 35.7 and 21.4 %', () => {
    const jar = readJar({
      sandMm: example.depth_sand_mm,
      siltMm: example.depth_sand_silt_mm - example.depth_sand_mm,
      clayMm: example.depth_total_mm - example.depth_sand_silt_mm,
    })
    expect(jar.sandPercent).toBeCloseTo(example.expected.sand_pct, 1)
    expect(jar.siltPercent).toBeCloseTo(example.expected.silt_pct, 1)
    expect(jar.clayPercent).toBeCloseTo(example.expected.clay_pct, 1)
    expect(jar.textureClass).toBe('loam')
  })

  it('Stokes law (from memory): after 2 h silt still floats, so the jar must own up to an error', () => {
    const fine = stokes.find((row) => row.d_um === 2)
    if (!fine) throw new Error('the truth file has no row of 2 micrometres')
    // Fall speed goes with the square of the grain: the largest grain still afloat at 10 cm after 2 h.
    const stillAfloatUm = 2 * Math.sqrt(fine.expected.seconds / 7200)
    expect(stillAfloatUm).toBeGreaterThan(2)
    expect(readJar({ sandMm: 30, siltMm: 25, clayMm: 15 }).errorPercent).toBeGreaterThanOrEqual(5)
  })

  it('names every class within the error, the likeliest first', () => {
    const { mayBe } = readJar({ sandMm: 30, siltMm: 25, clayMm: 15 })
    expect(mayBe[0]).toBe('loam')
    expect(mayBe).toContain('clay loam')
    expect(mayBe).toContain('sandy loam')
    expect(mayBe).not.toContain('clay')
    expect(mayBe).not.toContain('sand')
  })

  it('refuses an empty jar and a layer below nothing', () => {
    expect(() => readJar({ sandMm: 0, siltMm: 0, clayMm: 0 })).toThrow(RangeError)
    expect(() => readJar({ sandMm: -1, siltMm: 10, clayMm: 10 })).toThrow(RangeError)
  })
})
