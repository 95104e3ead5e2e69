import { describe, expect, it } from 'vitest'
import { bankPlants } from '../../src/report/drawing/bank-plants'
import { grownShare } from '../../src/report/drawing/growth'
import { rootSystem } from '../../src/report/drawing/roots'
import { sectionScale } from '../../src/report/drawing/scale'
import { seededRandom } from '../../src/report/drawing/seeded'
import { standingPlants } from '../../src/report/drawing/stand'
import { shrub, tree } from '../../src/report/drawing/woody'
import { rootHabits } from '#core/plants'
import { exampleView } from './fixture'

const view = exampleView()
const steep = view.zones.find((zone) => zone.letter === 'D')
if (!steep) throw new Error('the example has no zone D')

describe('plants that the section meets', () => {
  it('geometry of a line across a stand: share of the slope length, over the spacing, to the nearest plant', () => {
    const [span] = steep.spans
    const slopeM = ((span?.toM ?? 0) - (span?.fromM ?? 0)) / Math.cos((steep.slopeDegMean * Math.PI) / 180)
    const standing = standingPlants(steep, 10, 400)
    for (const line of steep.planting) {
      const met = standing.filter((each) => each.plant.id === line.plant.id).length
      expect(Math.abs(met - (slopeM * line.share) / line.spacingM)).toBeLessThan(1)
    }
  })

  it('stand inside their zone', () => {
    const [span] = steep.spans
    for (const { atM } of standingPlants(steep, 10, 30)) {
      expect(atM).toBeGreaterThanOrEqual(span?.fromM ?? NaN)
      expect(atM).toBeLessThanOrEqual(span?.toM ?? NaN)
    }
  })

  it('root no deeper than the soil that was measured', () => {
    for (const each of standingPlants(steep, 10, 30)) expect(each.rootDeepM).toBeLessThanOrEqual(0.5)
  })

  it('grow from year to year and never shrink', () => {
    const heights = [0, 1, 3, 5, 10].map((years) =>
      standingPlants(steep, years, 30).reduce((sum, each) => sum + each.heightM, 0),
    )
    for (const [at, height] of heights.entries()) expect(height).toBeGreaterThan(heights[at - 1] ?? 0)
  })

  it('the table’s own measure: 90 % of the spread at yearsToMature, or more with the planted unit counted', () => {
    for (const { plant } of steep.planting) {
      expect(grownShare(plant, plant.yearsToMature)).toBeGreaterThanOrEqual(0.9)
      expect(grownShare(plant, plant.yearsToMature)).toBeLessThan(0.95)
      expect(grownShare(plant, 0)).toBeCloseTo((2 * plant.unitRadiusM) / plant.spreadM, 9)
    }
  })

  it('refuses years before planting', () => {
    const plant = steep.planting[0]?.plant
    expect(() => plant && grownShare(plant, -1)).toThrow(RangeError)
    expect(() => plant && grownShare(plant, NaN)).toThrow(RangeError)
  })
})

describe('woody plants', () => {
  const base = { xPx: 400, yPx: 300 }
  const sizes = [
    [30, 24],
    [90, 120],
    [260, 280],
  ] as const

  it.each(sizes)('a tree of %d by %d px fills its height and spread, and no more', (heightPx, widthPx) => {
    for (const seed of ['one', 'two', 'three']) {
      const box = circlesBox(tree({ base, heightPx, widthPx, seed }).crown.fill)
      expect(box.right - box.left).toBeGreaterThan(widthPx * 0.75)
      expect(box.left).toBeGreaterThan(base.xPx - widthPx * 0.6)
      expect(box.right).toBeLessThan(base.xPx + widthPx * 0.6)
      expect(base.yPx - box.top).toBeGreaterThan(heightPx * 0.85)
      expect(base.yPx - box.top).toBeLessThan(heightPx * 1.12)
    }
  })

  it('the same seed draws the same plant, another seed another', () => {
    const size = { base, heightPx: 120, widthPx: 100 }
    expect(shrub({ ...size, seed: 'a' })).toEqual(shrub({ ...size, seed: 'a' }))
    expect(shrub({ ...size, seed: 'a' }).crown.edge).not.toBe(shrub({ ...size, seed: 'b' }).crown.edge)
  })

  it('the pipe model of Shinozaki et al. 1964: wood is thickest where it feeds the most tips', () => {
    const { wood } = tree({ base, heightPx: 260, widthPx: 280, seed: 'pipes' })
    const widths = wood.map((each) => each.widthPx)
    expect(widths).toEqual([...widths].sort((a, b) => b - a))
    expect(Math.max(...widths)).toBeLessThanOrEqual(260 * 0.06)
  })
})

describe('roots', () => {
  it.each(rootHabits)('%s goes down to its real depth on level ground, and no deeper', (habit) => {
    const size = { base: { xPx: 0, yPx: 0 }, deepPx: 60, bulkPx: 25, reachPx: 20, fall: 0 }
    const d = rootSystem(habit, size, seededRandom(habit))
    expect(d).not.toMatch(/NaN/)
    const deepest = deepestEnd(d)
    expect(deepest).toBeLessThanOrEqual(61)
    expect(deepest).toBeGreaterThan(habit === 'tuber-bulb' ? 40 : 47)
  })
})

describe('the whole bank', () => {
  it('is drawn the same from the same plan', () => {
    const scale = sectionScale(view, { widthPx: 1140, heightPx: 520 })
    expect(bankPlants(view, scale, 5)).toEqual(bankPlants(exampleView(), scale, 5))
  })
})

/** Extent of a path made of full circles. */
function circlesBox(d: string) {
  const circles = [...d.matchAll(/M(-?[\d.]+) (-?[\d.]+)a([\d.]+)/g)].map(([, x, y, r]) => ({
    left: Number(x),
    y: Number(y),
    r: Number(r),
  }))
  return {
    left: Math.min(...circles.map((circle) => circle.left)),
    right: Math.max(...circles.map((circle) => circle.left + 2 * circle.r)),
    top: Math.min(...circles.map((circle) => circle.y - circle.r)),
  }
}

/** Lowest end of the strokes of a path of M, q and L. */
function deepestEnd(d: string): number {
  const strokes = [...d.matchAll(/M(-?[\d.]+) (-?[\d.]+)(?:q-?[\d.]+ -?[\d.]+ -?[\d.]+ (-?[\d.]+))?/g)]
  return Math.max(...strokes.map(([, , y, down]) => Number(y) + Number(down ?? 0)))
}
