import { describe, expect, it } from 'vitest'
import { plantsPerM2, staggeredCover } from '../../../src/core/plants/spacing'
import { spacingTruth } from './read-truth'

describe('plants for each square metre', () => {
  const hundredSquareFeetM2 = 100 * spacingTruth.squareFoot.m2
  for (const { inches, plants } of spacingTruth.plantsPer100SquareFeet)
    it(`US grower tables: ${inches} inches apart in squares takes ${plants} plants per 100 square feet`, () => {
      const perM2 = plantsPerM2(inches * spacingTruth.inch.m, 'square')
      expect(Math.round(perM2 * hundredSquareFeetM2)).toBe(plants)
    })

  for (const { spacingM, plants } of spacingTruth.staggeredPerM2)
    it(`hexagonal lattice, 1.1547/s²: ${spacingM} m apart in staggered rows takes ${plants} plants a m²`, () => {
      const decimals = String(plants).split('.')[1]?.length ?? 0
      expect(plantsPerM2(spacingM, 'staggered')).toBeCloseTo(plants, decimals)
    })

  it('refuses a spacing that is no distance', () => {
    for (const spacingM of [0, -0.3, Number.NaN, Infinity])
      expect(() => plantsPerM2(spacingM, 'staggered')).toThrow(RangeError)
  })
})

describe('cover of staggered discs', () => {
  it('hexagonal packing density π/(2√3) = 0.9069: discs that touch cover that share', () => {
    expect(staggeredCover(0.15, 0.3)).toBeCloseTo(spacingTruth.hexagonalPackingDensity, 4)
  })

  it('exact: three neighbours close the gap between them at spacing/√3', () => {
    expect(staggeredCover(0.3 / Math.sqrt(3), 0.3)).toBe(1)
    expect(staggeredCover(0.3 / Math.sqrt(3) - 1e-4, 0.3)).toBeLessThan(1)
    expect(staggeredCover(0.3 / Math.sqrt(3) - 1e-7, 0.3)).toBeCloseTo(1, 5)
  })

  it('exact: before neighbours touch, cover is disc area times plants a m²', () => {
    expect(staggeredCover(0.1, 0.3)).toBeCloseTo(plantsPerM2(0.3, 'staggered') * Math.PI * 0.01, 12)
  })

  it('agrees with counting points of the triangle between three plants, to half a point in a hundred', () => {
    for (const radiusM of [0.12, 0.155, 0.162, 0.17])
      expect(Math.abs(staggeredCover(radiusM, 0.3) - countedCover(radiusM, 0.3))).toBeLessThan(0.005)
  })

  it('never shrinks as plants grow', () => {
    const covers = Array.from({ length: 60 }, (_, step) => staggeredCover(step * 0.004, 0.3))
    expect(covers.every((cover, step) => step === 0 || cover >= (covers[step - 1] ?? 0))).toBe(true)
  })

  it('refuses a negative radius and an empty spacing', () => {
    expect(() => staggeredCover(-0.1, 0.3)).toThrow(RangeError)
    expect(() => staggeredCover(0.1, 0)).toThrow(RangeError)
  })
})

/** Share of a fine raster over one triangle of neighbours that lies within reach of a corner. */
function countedCover(radiusM: number, spacingM: number): number {
  const heightM = (spacingM * Math.sqrt(3)) / 2
  const corners = [
    [0, 0],
    [spacingM, 0],
    [spacingM / 2, heightM],
  ] as const
  let inside = 0
  let covered = 0
  for (let across = 0; across < 400; across++)
    for (let up = 0; up < 400; up++) {
      const yM = ((up + 0.5) / 400) * heightM
      const xM = ((across + 0.5) / 400) * spacingM
      const edgeM = yM / Math.sqrt(3)
      if (xM < edgeM || xM > spacingM - edgeM) continue
      inside++
      if (corners.some(([cornerX, cornerY]) => Math.hypot(xM - cornerX, yM - cornerY) <= radiusM)) covered++
    }
  return covered / inside
}
