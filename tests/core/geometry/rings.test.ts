import { describe, expect, it } from 'vitest'
import {
  centroid,
  clipRing,
  convexHull,
  crossesItself,
  cutLine,
  distanceToSegmentM,
  perimeterM,
  pointInRing,
  ringAreaM2,
  signedAreaM2,
  simplifyRing,
  splitRing,
  type Ring,
} from '#core/geometry'

const ring = (...corners: [number, number][]): Ring => corners.map(([eastM, northM]) => ({ eastM, northM }))
const square = ring([0, 0], [4, 0], [4, 4], [0, 4])
/** A U open to the north: 6 × 4 m less a 2 × 3 m notch, 18 m². */
const bent = ring([0, 0], [6, 0], [6, 4], [4, 4], [4, 1], [2, 1], [2, 4], [0, 4])

describe('rings', () => {
  it('exact solution: areas, perimeter and centre of a 3-4-5 triangle', () => {
    const triangle = ring([10, 20], [13, 20], [10, 24])
    expect(signedAreaM2(triangle)).toBe(6)
    expect(signedAreaM2([...triangle].reverse())).toBe(-6)
    expect(perimeterM(triangle)).toBe(12)
    expect(centroid(triangle).eastM).toBeCloseTo(11, 12)
    expect(centroid(triangle).northM).toBeCloseTo(64 / 3, 12)
  })

  it('exact solution: the centre of an outline without area is the mean of its corners', () => {
    expect(centroid(ring([0, 0], [2, 0], [4, 0]))).toEqual({ eastM: 2, northM: 0 })
    expect(() => centroid([])).toThrow(RangeError)
  })

  it('exact solution: inside and outside of a bent outline', () => {
    expect(pointInRing({ eastM: 1, northM: 3 }, bent)).toBe(true)
    expect(pointInRing({ eastM: 3, northM: 3 }, bent)).toBe(false)
    expect(pointInRing({ eastM: 3, northM: 0.5 }, bent)).toBe(true)
    expect(pointInRing({ eastM: 7, northM: 0.5 }, bent)).toBe(false)
  })

  it('exact solution: hull of a square with points inside and on its sides', () => {
    const hull = convexHull([...square, { eastM: 2, northM: 2 }, { eastM: 2, northM: 0 }])
    expect(hull.length).toBe(4)
    expect(signedAreaM2(hull)).toBe(16)
    expect(convexHull(ring([1, 1], [2, 2], [3, 3])).length).toBeLessThan(3)
    expect(convexHull([])).toEqual([])
  })

  it('exact solution (Sutherland and Hodgman 1974 clip): areas of common parts', () => {
    expect(ringAreaM2(clipRing(square, ring([2, 2], [6, 2], [6, 6], [2, 6])))).toBe(4)
    expect(ringAreaM2(clipRing(square, ring([2, 6], [6, 6], [6, 2], [2, 2])))).toBe(4)
    expect(ringAreaM2(clipRing(bent, ring([0, 2], [6, 2], [6, 3], [0, 3])))).toBeCloseTo(4, 12)
    expect(clipRing(square, ring([9, 9], [10, 9], [10, 10]))).toEqual([])
  })

  it('exact solution: a line across a bent outline cuts it in three', () => {
    const pieces = splitRing(bent, { eastM: -1, northM: 2 }, { eastM: 7, northM: 2 })
    expect(pieces.map(ringAreaM2).sort((one, other) => one - other)).toEqual([4, 4, 10])
    expect(splitRing(square, { eastM: 0, northM: 9 }, { eastM: 1, northM: 9 })).toEqual([square])
    expect(() => splitRing(square, { eastM: 1, northM: 1 }, { eastM: 1, northM: 1 })).toThrow(RangeError)
  })

  it('property: pieces of a slanting cut add up to the whole', () => {
    for (const slant of [-3, -0.7, 0.2, 1, 2.5]) {
      const pieces = splitRing(bent, { eastM: 3, northM: 2 }, { eastM: 4, northM: 2 + slant })
      expect(pieces.length).toBeGreaterThan(1)
      expect(pieces.reduce((sum, piece) => sum + ringAreaM2(piece), 0)).toBeCloseTo(18, 9)
    }
  })

  it('exact solution: where a line runs inside an outline', () => {
    const spans = cutLine(bent, { eastM: -1, northM: 3 }, 90)
    expect(spans.map(({ fromM, toM }) => [fromM, toM].map((m) => Math.round(m * 1e9) / 1e9))).toEqual([
      [1, 3],
      [5, 7],
    ])
  })

  it('exact solution: distance to a piece of line, beside it and beyond its end', () => {
    const [from, to] = [
      { eastM: 0, northM: 0 },
      { eastM: 10, northM: 0 },
    ]
    expect(distanceToSegmentM({ eastM: 5, northM: 2 }, from, to)).toBe(2)
    expect(distanceToSegmentM({ eastM: 13, northM: 4 }, from, to)).toBe(5)
    expect(distanceToSegmentM({ eastM: 3, northM: 4 }, from, from)).toBe(5)
  })

  it('exact solution (Douglas and Peucker 1973): corners within the tolerance go, the others stay', () => {
    const rough = ring([0, 0], [2, 0.01], [4, 0], [4, 4], [2, 3.99], [0, 4])
    expect(simplifyRing(rough, 0.05).length).toBe(4)
    expect(simplifyRing(rough, 0.001).length).toBe(6)
    expect(simplifyRing(rough, 100).length).toBe(3)
    expect(() => simplifyRing(rough, -1)).toThrow(RangeError)
  })

  it('exact solution: a bow tie crosses itself, a bent outline does not', () => {
    expect(crossesItself(ring([0, 0], [4, 4], [4, 0], [0, 4]))).toEqual([0, 2])
    expect(crossesItself(bent)).toBeUndefined()
  })
})
