import { describe, expect, it } from 'vitest'
import { coverOf, type TerraceFigures } from '#core/cover'
import { terracesOn } from '../../../src/core/cover/terrace'
import { truth } from './truth'
import { brief, degOfPercent, steep, tables, zone } from './tables'

interface Ground {
  readonly slopeDegMean: number
  readonly slopeDegSteep?: number
  readonly planAreaM2?: number
}

const rows = tables.limits.terraces

function terrace(treadM: number, { slopeDegMean, slopeDegSteep, planAreaM2 = 100 }: Ground): TerraceFigures {
  const tread = { id: 'test', treadM, because: 'A width of this test.', source: 'yours' }
  const ground = { slopeDegMean, slopeDegSteep: slopeDegSteep ?? slopeDegMean, planAreaM2 }
  const [figures] = terracesOn(ground, { ...rows, treads: [tread] })
  if (!figures) throw new Error('no figures')
  return figures
}

describe('ground moved', () => {
  it('exact geometry: a square of 10 m levelled on a plane of 20 % cuts w³g/8 = 25.0 m³', () => {
    const square = terrace(10, { slopeDegMean: degOfPercent(20), planAreaM2: 100 })
    expect(square.cutM3).toBeCloseTo(25, 9)
    expect(square.cutM3PerM * 10).toBeCloseTo(25, 9)
  })

  it.each([1, 2.5, 4, 7])('exact geometry: a square of %d m cuts w³g/8 at any gradient', (sideM) => {
    for (const percent of [5, 12, 33, 50])
      expect(
        terrace(sideM, { slopeDegMean: degOfPercent(percent), planAreaM2: sideM ** 2 }).cutM3,
      ).toBeCloseTo((sideM ** 3 * percent) / 100 / 8, 9)
  })

  it('exact geometry: 2 m treads at 1 in 3 (18.43°) have steps of 0.667 m and cut 0.1667 m³ a metre', () => {
    const slopeDegMean = degOfPercent(100 / 3)
    expect(slopeDegMean).toBeCloseTo(18.43, 2)
    const row = terrace(2, { slopeDegMean })
    expect(row.stepM).toBeCloseTo(0.667, 3)
    expect(row.cutM3PerM).toBeCloseTo(0.1667, 4)
  })

  it('exact geometry: cut found by adding up thin slices between plane and tread, and fill is as much', () => {
    const slopeDegMean = 17
    const treadM = 3
    const slices = 20_000
    let cutM2 = 0
    let fillM2 = 0
    for (let at = 0; at < slices; at++) {
      const acrossM = ((at + 0.5) / slices - 0.5) * treadM
      const aboveTreadM = acrossM * Math.tan((slopeDegMean * Math.PI) / 180)
      if (aboveTreadM > 0) cutM2 += (aboveTreadM * treadM) / slices
      else fillM2 -= (aboveTreadM * treadM) / slices
    }
    const { cutM3PerM } = terrace(treadM, { slopeDegMean })
    expect(cutM3PerM).toBeCloseTo(cutM2, 6)
    expect(cutM3PerM).toBeCloseTo(fillM2, 6)
  })

  it('exact geometry: a 3-4-5 slope turns four fifths of its area level, the whole of its plan area', () => {
    const { levelShare, levelM2 } = terrace(2, { slopeDegMean: degOfPercent(75), planAreaM2: 60 })
    expect(levelShare).toBeCloseTo(0.8, 12)
    expect(levelM2).toBe(60)
  })

  it('level ground has no steps, moves nothing and calls for no caution', () => {
    expect(terrace(2, { slopeDegMean: 0 })).toMatchObject({ stepM: 0, cutM3: 0, levelShare: 1, cautions: [] })
  })
})

describe('cautions', () => {
  const cautionIds = (stepM: number, slopeDegMean = 10) =>
    terrace(1, { slopeDegMean, slopeDegSteep: degOfPercent(stepM * 100) }).cautions.map(({ id }) => id)

  it('IRC R404.4: a step above 24 in must be designed', () => {
    const { aboveM, aboveIn } = truth.stepDesigned
    expect(aboveIn * 0.0254).toBeCloseTo(aboveM, 2)
    expect(cautionIds(aboveM - 0.001)).toEqual(['step-any'])
    expect(cautionIds(aboveM + 0.001)).toEqual(['step-any', 'step-designed'])
  })

  it('IRC R105.2: a step above 4 ft asks for a permit', () => {
    const { aboveM, aboveIn } = truth.stepPermit
    expect(aboveIn * 0.0254).toBeCloseTo(aboveM, 2)
    expect(cautionIds(aboveM - 0.001)).not.toContain('step-permit')
    expect(cautionIds(aboveM + 0.001)).toContain('step-permit')
  })

  it('go by the steep part, and always send to an engineer and to local codes', () => {
    const gentleOnTheWhole = terrace(2, { slopeDegMean: 8, slopeDegSteep: 20 })
    expect(gentleOnTheWhole.stepM).toBeLessThan(truth.stepDesigned.aboveM)
    expect(gentleOnTheWhole.cautions.map(({ id }) => id)).toContain('step-designed')
    expect(gentleOnTheWhole.cautions[0]?.text).toMatch(/structural engineer.*local codes/)
  })
})

describe('as part of a zone’s cover', () => {
  it('gives 1.5, 2 and 3 m (common practice, no source) where terraces are not refused', () => {
    const { terraces } = coverOf(steep(15), brief(), tables)
    expect(terraces.map(({ treadM }) => treadM)).toEqual([1.5, 2, 3])
    for (const one of terraces) expect(one.levelM2).toBe(zone().planAreaM2)
  })

  it.each([3, 30])('gives none at %d°, where they are refused, not even when chosen', (deg) => {
    expect(coverOf(steep(deg), brief(), tables, 'terrace').terraces).toEqual([])
  })
})

describe('bad ground', () => {
  it.each([
    [{ slopeDegMean: 90 }, /slope must be 0 to below 90°, got 90/],
    [{ slopeDegMean: 10, slopeDegSteep: Number.NaN }, /slope must be 0 to below 90°, got NaN/],
    [{ slopeDegMean: 10, planAreaM2: 0 }, /planAreaM2 must be above 0, got 0/],
    [{ slopeDegMean: 10, planAreaM2: Infinity }, /planAreaM2 must be above 0/],
  ])('%j throws', (ground, why) => {
    expect(() => terrace(2, ground)).toThrow(why)
  })
})
