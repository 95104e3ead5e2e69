import { describe, expect, it } from 'vitest'
import { poreSizeIndex, soilProperties, textureClasses, type TextureClass } from '#core/soil'
import { waterHolding } from '../../../src/core/soil/water-holding'
import { stoneSlowing } from '../../../src/core/soil/stones'
import { pit, soilTables, truth } from './soil-tables'

const { rows, fao56Table19 } = truth<{
  rows: {
    texture: TextureClass
    sand_pct: number
    clay_pct: number
    om_pct: number
    expected: {
      wp_vol_pct: number
      fc_vol_pct: number
      sat_vol_pct: number
      ksat_mm_h: number
      matric_density: number
    }
    from: string
  }[]
  fao56Table19: {
    texture: TextureClass
    expected: { fc_min: number; fc_max: number; wp_min: number; wp_max: number }
  }[]
}>('soil-saxton-rawls')

/** The table prints whole per cents: half a unit, and a little for its own rounding [% by volume]. */
const WHOLE_PERCENT = 0.6
/** The table prints one decimal [mm/h]. */
const TENTH_MM_PER_H = 0.06
/** The table prints two decimals [t/m³]. */
const HUNDREDTH = 0.006

const usual = (sand: number, clay: number, organicPercent = 2.5, densityFactor = 1) =>
  waterHolding({ sand, clay, organicPercent, densityFactor })

describe('water held by a texture', () => {
  it.each(rows)(
    'Saxton & Rawls 2006 Table 3 (from: $from; densities from memory): $texture',
    ({ sand_pct, clay_pct, om_pct, expected }) => {
      const held = usual(sand_pct / 100, clay_pct / 100, om_pct)
      expect(Math.abs(100 * held.wiltingPoint - expected.wp_vol_pct)).toBeLessThan(WHOLE_PERCENT)
      expect(Math.abs(100 * held.fieldCapacity - expected.fc_vol_pct)).toBeLessThan(WHOLE_PERCENT)
      expect(Math.abs(100 * held.saturation - expected.sat_vol_pct)).toBeLessThan(WHOLE_PERCENT)
      expect(Math.abs(held.conductivityMmPerH - expected.ksat_mm_h)).toBeLessThan(TENTH_MM_PER_H)
      expect(Math.abs(held.densityTPerM3 - expected.matric_density)).toBeLessThan(HUNDREDTH)
    },
  )

  it('FAO-56 Table 19: where two textures have bands apart, ours stand in the same order', () => {
    let pairs = 0
    for (const low of fao56Table19)
      for (const high of fao56Table19) {
        const [less, more] = [low, high].map(({ texture }) =>
          soilProperties(pit({ by: 'class', class: texture }), soilTables),
        )
        if (low.expected.fc_max < high.expected.fc_min) {
          pairs++
          expect(less?.fieldCapacity, `${low.texture}, ${high.texture}`).toBeLessThan(
            more?.fieldCapacity ?? 0,
          )
        }
        if (low.expected.wp_max < high.expected.wp_min) {
          pairs++
          expect(less?.wiltingPoint, `${low.texture}, ${high.texture}`).toBeLessThan(more?.wiltingPoint ?? 0)
        }
      }
    expect(pairs).toBeGreaterThan(20)
  })

  it('Saxton & Rawls 2006, density (from memory): a factor of 1.1 makes the soil a tenth denser and far slower', () => {
    const normal = usual(0.4, 0.2)
    const packed = usual(0.4, 0.2, 2.5, 1.1)
    expect(packed.densityTPerM3 / normal.densityTPerM3).toBeCloseTo(1.1, 10)
    expect(packed.saturation).toBeCloseTo(1 - packed.densityTPerM3 / 2.65, 10)
    expect(packed.conductivityMmPerH).toBeLessThan(normal.conductivityMmPerH / 2)
  })

  it('common practice, no source: organic matter holds more water and lets more through', () => {
    const poor = usual(0.4, 0.2, 1)
    const rich = usual(0.4, 0.2, 6)
    expect(rich.fieldCapacity - rich.wiltingPoint).toBeGreaterThan(poor.fieldCapacity - poor.wiltingPoint)
    expect(rich.conductivityMmPerH).toBeGreaterThan(poor.conductivityMmPerH)
  })

  it('keeps wilting point, field capacity and saturation in order over the whole triangle', () => {
    for (let sand = 0; sand <= 100; sand += 4)
      for (let clay = 0; clay <= Math.min(60, 100 - sand); clay += 4)
        for (const organicPercent of [0, 2.5, 8])
          for (const densityFactor of [0.9, 1, 1.1, 1.3]) {
            const held = waterHolding({ sand: sand / 100, clay: clay / 100, organicPercent, densityFactor })
            expect(held.wiltingPoint).toBeGreaterThan(0)
            expect(held.fieldCapacity).toBeGreaterThan(held.wiltingPoint)
            expect(held.saturation).toBeGreaterThan(held.fieldCapacity)
            expect(held.saturation).toBeLessThan(1)
            expect(held.conductivityMmPerH).toBeGreaterThan(0)
          }
  })

  it('Saxton & Rawls 2006: the pore size index runs the straight line through 33 and 1500 kPa', () => {
    const index = poreSizeIndex(0.28, 0.14)
    expect(33 * (0.28 / 0.14) ** (1 / index)).toBeCloseTo(1500, 6)
    expect(() => poreSizeIndex(0.1, 0.2)).toThrow(RangeError)
  })

  it.each([
    { sand: -0.1, clay: 0.2, organicPercent: 2, densityFactor: 1 },
    { sand: 0.1, clay: 0.7, organicPercent: 2, densityFactor: 1 },
    { sand: 0.8, clay: 0.4, organicPercent: 2, densityFactor: 1 },
    { sand: 0.4, clay: 0.2, organicPercent: 9, densityFactor: 1 },
    { sand: 0.4, clay: 0.2, organicPercent: 2, densityFactor: 1.5 },
  ])('refuses %o', (grains) => {
    expect(() => waterHolding(grains)).toThrow(RangeError)
  })
})

describe('stones', () => {
  it('Saxton & Rawls 2006, gravel (from memory): none slow nothing; more slow more', () => {
    expect(stoneSlowing(0, 1.4)).toBe(1)
    expect(stoneSlowing(0.2, 1.4)).toBeLessThan(1)
    expect(stoneSlowing(0.4, 1.4)).toBeLessThan(stoneSlowing(0.2, 1.4))
    expect(stoneSlowing(0.9, 1.4)).toBeGreaterThan(0)
  })

  it('solid geometry: at half stones by volume the weights are as the densities', () => {
    // Half a cubic metre of stone 1.325 t, half of earth 0.7 t: share by weight 0.6543.
    const byWeight = 1.325 / (1.325 + 0.7)
    const density = 1.4 / 2.65
    expect(stoneSlowing(0.5, 1.4)).toBeCloseTo((1 - byWeight) / (1 - byWeight * (1 - 1.5 * density)), 10)
  })

  it('refuses shares and densities that can not be', () => {
    expect(() => stoneSlowing(0.95, 1.4)).toThrow(RangeError)
    expect(() => stoneSlowing(0.1, 3)).toThrow(RangeError)
  })

  it('water held goes down with the share of stones', () => {
    for (const name of textureClasses) {
      const clean = soilProperties(pit({ by: 'class', class: name }), soilTables)
      const stony = soilProperties(pit({ by: 'class', class: name }, { stonesPercent: 40 }), soilTables)
      expect(stony.availableWaterMm).toBeCloseTo(0.6 * clean.availableWaterMm, 8)
      expect(stony.drainableMm).toBeCloseTo(0.6 * clean.drainableMm, 8)
    }
  })
})
