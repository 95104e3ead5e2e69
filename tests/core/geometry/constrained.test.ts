import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  convexHull,
  levelOnTin,
  nodeLines,
  ringAreaM2,
  samePlaces,
  tinNeighbours,
  triangulate,
  triangulateAlong,
  type LevelPoint,
  type LinePiece,
} from '#core/geometry'
import { edgeKey, edgesAgainstDelaunay, edgesOf, tinAreaM2 } from './triangulation'

const truth = JSON.parse(
  readFileSync(new URL('../../truth/qhull-delaunay.json', import.meta.url), 'utf8'),
) as {
  readonly points: readonly (readonly [number, number])[]
  readonly edges: readonly (readonly [number, number])[]
  readonly hull: readonly number[]
  readonly triangles: number
}

const qhull: readonly LevelPoint[] = truth.points.map(([eastM, northM]) => ({
  eastM,
  northM,
  levelM: 0,
}))

const toleranceM = 0.001
const rules = {
  toleranceM,
  crossingLevelM: (one: { levelM: number }, other: { levelM: number }) => (one.levelM + other.levelM) / 2,
}

/** Points no two of which are one, and lines between some of them. */
const tangle = fc
  .record({
    places: fc.array(
      fc.record({ eastM: fc.integer({ min: 0, max: 40 }), northM: fc.integer({ min: 0, max: 40 }) }),
      { minLength: 3, maxLength: 60 },
    ),
    ends: fc.array(fc.tuple(fc.nat(), fc.nat()), { maxLength: 25 }),
  })
  .map(({ places, ends }) => {
    const group = samePlaces(places, toleranceM)
    const points = places
      .filter((_, at) => group[at] === at)
      .map((place) => ({ ...place, levelM: place.eastM * 0.2 - place.northM * 0.1 }))
    const pieces = ends.map(([from, to], line): LinePiece => ({
      from: from % points.length,
      to: to % points.length,
      line,
    }))
    return { points, pieces }
  })
  .filter(({ points }) => ringAreaM2(convexHull(points)) > 1)

describe('triangles without lines', () => {
  it('Qhull (Barber, Dobkin and Huhdanpaa 1996): the same edges between 120 points', () => {
    const { tin } = triangulateAlong(qhull, [])
    expect([...edgesOf(tin).keys()].sort()).toEqual(truth.edges.map(([a, b]) => edgeKey(a, b)).sort())
    expect(tin.corners.length / 3).toBe(truth.triangles)
    expect(edgesOf(triangulate(qhull))).toEqual(edgesOf(tin))
    const { onRim } = tinNeighbours(tin)
    expect([...onRim.keys()].filter((point) => onRim[point])).toEqual(truth.hull)
  })

  it('Qhull (Barber, Dobkin and Huhdanpaa 1996): the same neighbours of every point', () => {
    const neighbours = tinNeighbours(triangulateAlong(qhull, []).tin)
    qhull.forEach((_, point) => {
      const expected = truth.edges.flatMap(([a, b]) => (a === point ? [b] : b === point ? [a] : []))
      expect([...Array.from(neighbours.of(point))].sort((a, b) => a - b)).toEqual(
        expected.sort((a, b) => a - b),
      )
    })
  })
})

describe('triangles along lines', () => {
  it('Sloan 1993: every piece of line is an edge, all others keep the circle rule', () => {
    fc.assert(
      fc.property(tangle, ({ points, pieces }) => {
        const noded = nodeLines(points, pieces, rules)
        const { tin, missed } = triangulateAlong(noded.points, noded.pieces)
        expect(missed).toEqual([])
        const edges = edgesOf(tin)
        expect(noded.pieces.filter(({ from, to }) => !edges.has(edgeKey(from, to)))).toEqual([])
        expect(edgesAgainstDelaunay(tin, noded.pieces)).toEqual([])
      }),
      { numRuns: 500 },
    )
  })

  it('Euler: points less edges plus triangles make 1, and the triangles fill the hull', () => {
    fc.assert(
      fc.property(tangle, ({ points, pieces }) => {
        const noded = nodeLines(points, pieces, rules)
        const { tin } = triangulateAlong(noded.points, noded.pieces)
        const edges = edgesOf(tin)
        expect(noded.points.length - edges.size + tin.corners.length / 3).toBe(1)
        expect([...edges.values()].every((triangles) => triangles <= 2)).toBe(true)
        expect(tinAreaM2(tin)).toBeCloseTo(ringAreaM2(convexHull(points)), 6)
      }),
    )
  })

  it('exact solution: on a plane every crossing and every place between lies on the plane', () => {
    fc.assert(
      fc.property(tangle, ({ points, pieces }) => {
        const noded = nodeLines(points, pieces, rules)
        for (const { eastM, northM, levelM } of noded.points)
          expect(levelM).toBeCloseTo(eastM * 0.2 - northM * 0.1, 9)
        const levelAt = levelOnTin(triangulateAlong(noded.points, noded.pieces).tin)
        const middle = points.slice(0, 3)
        const eastM = middle.reduce((sum, point) => sum + point.eastM, 0) / 3
        const northM = middle.reduce((sum, point) => sum + point.northM, 0) / 3
        expect(levelAt({ eastM, northM })).toBeCloseTo(eastM * 0.2 - northM * 0.1, 9)
      }),
    )
  })

  it('says which pieces it missed when lines still cross', () => {
    const square = [point(0, 0), point(10, 0), point(10, 10), point(0, 10)]
    const crossing = [
      { from: 0, to: 2, line: 0 },
      { from: 1, to: 3, line: 1 },
    ]
    const { tin, missed } = triangulateAlong(square, crossing)
    expect(missed).toEqual([1])
    expect(tinAreaM2(tin)).toBe(100)
    expect(triangulateAlong([], []).tin.corners).toHaveLength(0)
    expect(triangulateAlong(square.slice(0, 2), [crossing[0]!]).missed).toEqual([0])
    expect(levelOnTin(tin)({ eastM: 20, northM: 5 })).toBeUndefined()
  })
})

describe('lines that meet', () => {
  it('exact solution: diagonals of a square cross in its middle, at the mean of their levels', () => {
    const square = [point(0, 0, 1), point(10, 0, 2), point(10, 10, 3), point(0, 10, 6)]
    const noded = nodeLines(
      square,
      [
        { from: 0, to: 2, line: 7 },
        { from: 3, to: 1, line: 9 },
      ],
      rules,
    )
    expect(noded.points[4]).toEqual(point(5, 5, 3))
    expect(noded.crossings).toEqual([
      { point: 4, one: { line: 7, levelM: 2 }, other: { line: 9, levelM: 4 } },
    ])
    expect(noded.pieces).toHaveLength(4)
  })

  it('exact solution: a line goes through points that lie on it, and a doubled stretch is one', () => {
    const points = [point(0, 0), point(10, 0), point(4, 0.0005, 9), point(4, 0.0015), point(12, 0)]
    const noded = nodeLines(
      points,
      [
        { from: 0, to: 1, line: 0 },
        { from: 4, to: 0, line: 1 },
        { from: 2, to: 2, line: 2 },
      ],
      rules,
    )
    const keys = noded.pieces.map(({ from, to }) => edgeKey(from, to)).sort()
    expect(keys).toEqual(['0-2', '1-2', '1-4'])
    expect(noded.snapped.map(({ point: at }) => at).sort()).toEqual([1, 2, 2])
  })
})

function point(eastM: number, northM: number, levelM = 0): LevelPoint {
  return { eastM, northM, levelM }
}
