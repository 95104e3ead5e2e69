import { describe, expect, it } from 'vitest'
import {
  cellAt,
  cellCentre,
  cellOutline,
  cellRing,
  cellShares,
  clipRing,
  fitPlane,
  frameAround,
  levelOnPlaneM,
  ringAreaM2,
  signedAreaM2,
  triangleThicknessM,
  trianglePlane,
  trianglesOverGrid,
  triangulate,
  type Ring,
} from '#core/geometry'

const ring = (...corners: [number, number][]): Ring => corners.map(([eastM, northM]) => ({ eastM, northM }))
const star = ring(
  [0.3, 0.2],
  [6.1, 1.7],
  [9.4, 0.4],
  [7.7, 5.2],
  [9.9, 9.3],
  [4.4, 6.6],
  [0.7, 8.8],
  [2.9, 4.1],
)

describe('grid of cells', () => {
  it('exact solution: row 0 is the northernmost, column 0 the westernmost', () => {
    const frame = { columns: 3, rows: 2, cellM: 2, westM: -1, southM: 10 }
    expect(cellCentre(frame, 0)).toEqual({ eastM: 0, northM: 13 })
    expect(cellCentre(frame, 5)).toEqual({ eastM: 4, northM: 11 })
    for (let cell = 0; cell < 6; cell++) expect(cellAt(frame, cellCentre(frame, cell))).toBe(cell)
    expect(cellAt(frame, { eastM: -2, northM: 11 })).toBeUndefined()
    expect(() => cellCentre(frame, 6)).toThrow(RangeError)
  })

  it('exact solution: a frame covers its outline with lines at whole multiples', () => {
    expect(frameAround(ring([0.2, 0], [3, 0], [3, 2.1]), 0.5)).toEqual({
      columns: 6,
      rows: 5,
      cellM: 0.5,
      westM: 0,
      southM: 0,
    })
    expect(() => frameAround(star, 0)).toThrow(RangeError)
    expect(() => frameAround([], 1)).toThrow(RangeError)
  })

  it.each([0.25, 0.5, 1, 3])('second method: shares of %f m cells equal clipped areas', (cellM) => {
    for (const outline of [star, [...star].reverse()]) {
      const frame = frameAround(outline, cellM)
      const shares = cellShares(outline, frame)
      shares.forEach((share, cell) => {
        const clipped = ringAreaM2(clipRing(outline, cellRing(frame, cell))) / cellM ** 2
        expect(Math.abs(share - clipped)).toBeLessThan(1e-8)
      })
      const sumM2 = shares.reduce((sum, share) => sum + share, 0) * cellM ** 2
      expect(sumM2).toBeCloseTo(ringAreaM2(outline), 6)
    }
  })

  it('exact solution: shares of a grid smaller than the outline', () => {
    const frame = { columns: 2, rows: 2, cellM: 1, westM: 0, southM: 0 }
    expect([...cellShares(ring([-5, -5], [9, -5], [9, 9], [-5, 9]), frame)]).toEqual([1, 1, 1, 1])
    expect([...cellShares(ring([-5, -5], [1.5, -5], [1.5, 9], [-5, 9]), frame)]).toEqual([1, 0.5, 1, 0.5])
    expect([...cellShares(ring([5, 5], [6, 5], [6, 6]), frame)]).toEqual([0, 0, 0, 0])
  })

  it('exact solution: outline of cells, largest part only, corners touching kept apart', () => {
    const frame = { columns: 5, rows: 4, cellM: 1, westM: 0, southM: 0 }
    const chosen = [1, 1, 0, 0, 0, 1, 0, 0, 0, 1, 0, 1, 1, 1, 0, 0, 1, 0, 1, 0]
    const outline = cellOutline(frame, chosen)
    expect(outline && signedAreaM2(outline)).toBe(5)
    expect(cellOutline(frame, new Array(20).fill(0))).toBeUndefined()
    const all = cellOutline(frame, new Array(20).fill(1))
    expect(all?.length).toBe(4)
  })

  it('exact solution: the outline of a ring of cells has the hole filled', () => {
    const frame = { columns: 3, rows: 3, cellM: 1, westM: 0, southM: 0 }
    const outline = cellOutline(frame, [1, 1, 1, 1, 0, 1, 1, 1, 1])
    expect(outline && ringAreaM2(outline)).toBe(9)
  })
})

describe('triangles', () => {
  const level = (eastM: number, northM: number) => 3 + 0.2 * eastM - 0.4 * northM
  const points = star.map((corner) => ({ ...corner, levelM: level(corner.eastM, corner.northM) }))

  it('exact solution: Delaunay triangles fill the hull and run anticlockwise', () => {
    const tin = triangulate(points)
    let areaM2 = 0
    for (let at = 0; at < tin.corners.length; at += 3) {
      const corners = [0, 1, 2].flatMap((turn) => tin.points[tin.corners[at + turn] ?? -1] ?? [])
      expect(signedAreaM2(corners)).toBeGreaterThan(0)
      areaM2 += signedAreaM2(corners)
    }
    expect(areaM2).toBeCloseTo(79.905, 9)
    expect(triangulate(ring([0, 0], [1, 1], [2, 2]).map((p) => ({ ...p, levelM: 0 }))).corners.length).toBe(0)
    expect(triangulate([]).corners.length).toBe(0)
  })

  it('exact solution: levels of a plane are met in every triangle', () => {
    const tin = triangulate(points)
    const frame = frameAround(star, 0.5)
    const over = trianglesOverGrid(tin, frame)
    expect(over.some((triangle) => triangle >= 0)).toBe(true)
    over.forEach((triangle, cell) => {
      if (triangle < 0) return
      const plane = trianglePlane(tin, triangle)
      const { eastM, northM } = cellCentre(frame, cell)
      expect(plane && levelOnPlaneM(plane, { eastM, northM })).toBeCloseTo(level(eastM, northM), 9)
      expect(triangleThicknessM(tin, triangle)).toBeGreaterThan(0)
    })
  })

  it('exact solution: the plane nearest to levels on a plane is that plane', () => {
    const plane = fitPlane(points)
    expect(plane?.eastGradient).toBeCloseTo(0.2, 12)
    expect(plane?.northGradient).toBeCloseTo(-0.4, 12)
    expect(fitPlane(points.slice(0, 2))).toBeUndefined()
    expect(fitPlane([0, 1, 2].map((m) => ({ eastM: m, northM: 2 * m, levelM: m })))).toBeUndefined()
  })
})
