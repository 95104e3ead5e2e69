import { describe, expect, it } from 'vitest'
import { nearestOnRing, ringStretch } from '#core/geometry'

const at = (eastM: number, northM: number) => ({ eastM, northM })
const square = [at(0, 0), at(10, 0), at(10, 10), at(0, 10)]

describe('the nearest place on an outline', () => {
  it.each([
    [at(4, -3), at(4, 0), 0],
    [at(12, 7), at(10, 7), 1],
    [at(1, 5), at(0, 5), 3],
    [at(13, 14), at(10, 10), 1],
  ])(
    'foot of the perpendicular, or the corner (by construction, a square of 10 m): %o',
    (place, foot, side) => {
      expect(nearestOnRing(square, place)).toMatchObject({ at: foot, side })
    },
  )

  it('refuses an outline without corners', () => {
    expect(() => nearestOnRing([], at(0, 0))).toThrow(RangeError)
  })
})

describe('a stretch of an outline (by construction, a square of 10 m)', () => {
  it('goes on in the order of the corners', () => {
    expect(ringStretch(square, at(4, 0), at(10, 3))).toEqual([at(4, 0), at(10, 0), at(10, 3)])
  })

  it('and the other way about it goes the long way round', () => {
    expect(ringStretch(square, at(10, 3), at(4, 0))).toEqual([
      at(10, 3),
      at(10, 10),
      at(0, 10),
      at(0, 0),
      at(4, 0),
    ])
  })

  it('on one side it is straight, backwards it runs all the way round', () => {
    expect(ringStretch(square, at(2, 0), at(8, 0))).toEqual([at(2, 0), at(8, 0)])
    expect(ringStretch(square, at(8, 0), at(2, 0))).toHaveLength(6)
  })

  it('between corners it is the side itself', () => {
    expect(ringStretch(square, at(10, 0), at(10, 10))).toEqual([at(10, 0), at(10, 10)])
  })
})
