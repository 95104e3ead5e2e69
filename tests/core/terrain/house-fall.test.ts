import { describe, expect, it } from 'vitest'
import { houseFalls, terrainOf, type HouseOutline } from '#core/terrain'
import { surfaceOf } from './grids'

const size = { columns: 81, rows: 81, cellM: 0.5 }
const box = (halfM: number, eastM = 0, northM = 0): HouseOutline => ({
  id: 'house',
  name: 'House',
  ring: [
    { eastM: eastM - halfM, northM: northM - halfM },
    { eastM: eastM + halfM, northM: northM - halfM },
    { eastM: eastM + halfM, northM: northM + halfM },
    { eastM: eastM - halfM, northM: northM + halfM },
  ],
})

describe('the fall of the ground beside a house', () => {
  it('exact solution: on a plane rising north by 1 in 8 the north wall has 1 in 8 towards it, 0.375 m in 3 m', () => {
    const plane = surfaceOf(size, (_e, n) => 0.125 * n)
    const [fall] = houseFalls(plane, terrainOf(plane), [box(4)])
    expect(fall?.towardsGradient).toBeCloseTo(0.125, 9)
    expect(fall?.towardsM).toBeCloseTo(0.375, 9)
    expect(fall?.awayGradient).toBeCloseTo(0.125, 9)
    expect(fall?.at?.northM).toBeCloseTo(4, 9)
    expect(fall?.walls.map(({ gradient }) => Number(gradient.toFixed(9)) + 0)).toEqual([-0.125, 0, 0.125, 0])
    expect(fall?.reachM).toBe(3)
  })

  it.each([20, 65, 140, 250])(
    'exact solution: on a plane facing %i° each wall has the part of the gradient that lies across it, drawn either way round',
    (facesDeg) => {
      const [east, north] = [Math.sin((facesDeg * Math.PI) / 180), Math.cos((facesDeg * Math.PI) / 180)]
      const plane = surfaceOf(size, (e, n) => -0.2 * (e * east + n * north))
      const exact = [0.2 * north, -0.2 * east, -0.2 * north, 0.2 * east]
      const house = box(5)
      const [fall] = houseFalls(plane, terrainOf(plane), [house])
      fall?.walls.forEach(({ gradient }, wall) => expect(gradient).toBeCloseTo(exact[wall] ?? NaN, 9))
      expect(fall?.towardsGradient).toBeCloseTo(Math.max(...exact), 9)
      const [turned] = houseFalls(plane, terrainOf(plane), [{ ...house, ring: house.ring.toReversed() }])
      expect(turned?.towardsGradient).toBeCloseTo(Math.max(...exact), 9)
    },
  )

  it('International Residential Code R401.3, from memory: 6 inches in 10 ft all round is 1 in 20 away and none towards', () => {
    const [perM, cornerM] = [0.1524 / 3.048, 4]
    const mound = surfaceOf(size, (e, n) => -perM * Math.max(0, Math.max(Math.abs(e), Math.abs(n)) - cornerM))
    const [fall] = houseFalls(mound, terrainOf(mound), [box(cornerM)], 3.048)
    expect(fall?.towardsGradient).toBe(0)
    expect(fall?.at).toBeUndefined()
    expect(fall?.awayGradient).toBeCloseTo(0.05, 2)
  })

  it('a house beyond the foot of the plot is judged by the ground that lies within reach', () => {
    const plane = surfaceOf(size, (_e, n) => 0.125 * n)
    const [near, far] = houseFalls(plane, terrainOf(plane), [box(4, 0, -25), box(4, 0, -40)])
    expect(near?.towardsGradient).toBeCloseTo(0.125, 9)
    expect(far?.walls).toEqual([])
    expect(far?.towardsGradient).toBe(0)
  })

  it('ground behind another house does not count', () => {
    const step = surfaceOf(size, (_e, n) => (n > 6.2 ? 1 : 0))
    const terrain = terrainOf(step)
    const alone = houseFalls(step, terrain, [box(4)])[0]?.towardsM
    const shielded = houseFalls(step, terrain, [box(4), { ...box(8, 0, 13.6), id: 'other' }])[0]?.towardsM
    expect(alone).toBeCloseTo(1, 6)
    expect(shielded).toBeCloseTo(0, 6)
  })

  it('refuses a reach of nothing', () => {
    const plane = surfaceOf(size, () => 0)
    expect(() => houseFalls(plane, terrainOf(plane), [box(4)], 0)).toThrow(RangeError)
  })
})
