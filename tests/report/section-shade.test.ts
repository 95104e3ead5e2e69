import { describe, expect, it } from 'vitest'
import { eachMonth } from '#core/units'
import { sectionScale } from '#report'
import { noonLights } from '../../src/report/drawing/sun-rays'
import { standingShape } from '../../src/report/section-view-standing'
import type { SectionObstacle, SectionView } from '../../src/report/section-view.types'
import { exampleView } from './fixture'

/** Tilt of the Earth's axis [°]: Meeus 1998, J2000. */
const TILT_DEG = 23.44

/** Level ground 30 m long that runs south from its top edge, at 52° N. */
function levelView(obstacles: readonly SectionObstacle[]): SectionView {
  const ground = Array.from({ length: 61 }, (_, at) => ({
    distanceM: at / 2,
    heightM: 0,
    slopeDeg: 0,
    levelSdM: 0,
  }))
  return {
    ...exampleView(),
    ...{
      lengthM: 30,
      fallM: 0.06,
      bearingDeg: 180,
      latitudeDeg: 52,
      ground,
      zones: [],
      dangers: [],
      obstacles,
    },
  }
}

const solid = eachMonth(() => 0)

function shadeOf(obstacle: SectionObstacle, when: 'midsummer' | 'midwinter') {
  const view = levelView([obstacle])
  const scale = sectionScale(view, { widthPx: 1140, heightPx: 460 })
  return noonLights(view, scale).find(({ sun }) => sun.when === when)?.shaded ?? []
}

const lengthM = (stretches: readonly { fromM: number; toM: number }[]) =>
  stretches.reduce((sum, { fromM, toM }) => sum + toM - fromM, 0)

const cotangent = (deg: number) => 1 / Math.tan((deg * Math.PI) / 180)

describe('shade on the section at noon', () => {
  const heights = { midsummer: 90 - 52 + TILT_DEG, midwinter: 90 - 52 - TILT_DEG }

  it.each(['midsummer', 'midwinter'] as const)(
    'exact solution: a wall 2 m high throws a shadow of its height by the cotangent of the sun, %s',
    (when) => {
      const wall: SectionObstacle = {
        ...{ id: 'wall', kind: 'wall', name: 'wall', fromM: 25, toM: 25.2, heightM: 2, cut: true },
        standing: { through: solid, crown: undefined, roof: { eavesM: 2, ridgeM: 2, form: 'flat' } },
      }
      // Shade is read every 0.1 m; the wall itself stands in it.
      expect(
        Math.abs(lengthM(shadeOf(wall, when)) - (2 * cotangent(heights[when]) + 0.2)),
      ).toBeLessThanOrEqual(0.25)
    },
  )

  it('exact solution: light passes below a crown that begins 4 m up', () => {
    const tree: SectionObstacle = {
      ...{ id: 'oak', kind: 'tree', name: 'oak', fromM: 26, toM: 26, heightM: 8, cut: true },
      standing: { through: solid, crown: { lowM: 4, highM: 8, wideM: 4 }, roof: undefined },
    }
    const [stretch] = shadeOf(tree, 'midsummer')
    // The light that just passes the near lower edge meets the ground 4 m × cot 61.4° from it.
    expect(Math.abs((stretch?.toM ?? 0) - (28 - 4 * cotangent(heights.midsummer)))).toBeLessThanOrEqual(0.2)
    expect(Math.abs((stretch?.fromM ?? 0) - (24 - 8 * cotangent(heights.midsummer)))).toBeLessThanOrEqual(0.2)
  })

  it('what has no height throws none, as the sun is reckoned, and neither does a crown that is bare', () => {
    const tree = { id: 'oak', kind: 'tree', name: 'oak', fromM: 20, toM: 20, heightM: 8, cut: true } as const
    expect(shadeOf({ ...tree, heightM: undefined }, 'midwinter')).toEqual([])
    const bareThrough = eachMonth((month) => (month > 3 && month < 10 ? 0.03 : 0.6))
    const standing = { through: bareThrough, crown: { lowM: 2, highM: 8, wideM: 5 }, roof: undefined }
    expect(shadeOf({ ...tree, standing }, 'midwinter')).toEqual([])
    expect(shadeOf({ ...tree, standing }, 'midsummer')).not.toEqual([])
  })

  it('a ridge square to the section is seen from its gable, one along it from its side', () => {
    const section = {
      from: { eastM: 0, northM: 30 },
      to: { eastM: 0, northM: 0 },
      lengthM: 30,
      stations: [],
    }
    const house = (ridge: readonly [number, number, number, number]) => {
      const [fromE, fromN, toE, toN] = ridge
      const corner = (eastM: number, northM: number) => ({ eastM, northM })
      return {
        ...{ id: 'house', name: 'House', crowns: [], through: solid },
        screens: [
          { from: corner(0, 0), to: corner(8, 0), topFromM: 103, topToM: 103 },
          { from: corner(fromE, fromN), to: corner(toE, toN), topFromM: 106, topToM: 106 },
        ],
      }
    }
    expect(standingShape(house([0, 3, 8, 3]), section, 100).roof).toEqual({
      eavesM: 3,
      ridgeM: 6,
      form: 'gable',
    })
    expect(standingShape(house([4, 0, 4, 6]), section, 100).roof?.form).toBe('along')
  })
})
