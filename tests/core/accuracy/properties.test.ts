import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { withinReach, zoneSlopeErrors } from '#core/accuracy'
import type { GridSurvey, LevelsSurvey } from '#core/survey'
import { normals } from './chance'
import { errorsOf, innerCells, known, levels } from './surfaces'

const spots = (normal: () => number, fall: number): LevelsSurvey['points'] =>
  Array.from({ length: 36 }, (_, at) => {
    const eastM = (at % 6) * 4 + 0.3 * normal()
    const northM = Math.floor(at / 6) * 4 + 0.3 * normal()
    return { eastM, northM, levelM: 50 - fall * eastM + 0.1 * normal() }
  })

describe('errors of a surface', () => {
  it('never grow when an even survey is measured better (JCGM 100:2008: variances add)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 0.5, noNaN: true }),
        fc.double({ min: 1.01, max: 4, noNaN: true }),
        fc.double({ min: -1, max: 1, noNaN: true }),
        (sd, worse, fall) => {
          const plane = levels([0, 0, 0], [9, 1, -9 * fall], [1, 8, -fall], [8, 9, -8 * fall])
          const good = known(plane, 1, errorsOf(sd)).accuracy
          const bad = known(plane, 1, errorsOf(sd * worse)).accuracy
          good.levelSdM.forEach((value, cell) => expect(bad.levelSdM[cell]).toBeGreaterThanOrEqual(value))
          good.slopeSdDeg.forEach((value, cell) => expect(bad.slopeSdDeg[cell]).toBeGreaterThanOrEqual(value))
        },
      ),
      { numRuns: 40, seed: 1 },
    )
  })

  it('turn with the plot: a quarter turn changes none', () => {
    const normal = normals(11)
    const points = spots(normal, 0.3)
    const turned = points.map(({ eastM, northM, levelM }) => ({ eastM: -northM, northM: eastM, levelM }))
    const before = known({ kind: 'levels', points }, 1, errorsOf(0.02, 0.05))
    const after = known({ kind: 'levels', points: turned }, 1, errorsOf(0.02, 0.05))
    expect(after.accuracy.from.roughnessM).toBeCloseTo(before.accuracy.from.roughnessM!, 9)
    const { frame, share } = before.surface
    let compared = 0
    for (const cell of share.keys()) {
      const [column, row] = [cell % frame.columns, Math.floor(cell / frame.columns)]
      const other = (after.surface.frame.rows - 1 - column) * after.surface.frame.columns + row
      if (!(share[cell]! > 0.01) || !(after.surface.share[other]! > 0.01)) continue
      compared++
      expect(after.accuracy.levelSdM[other]).toBeCloseTo(before.accuracy.levelSdM[cell]!, 5)
      expect(after.accuracy.slopeSdDeg[other]).toBeCloseTo(before.accuracy.slopeSdDeg[cell]!, 4)
    }
    expect(compared).toBeGreaterThan(300)
  })

  it('are finite and above 0 in every cell of the plot, beyond the outermost points too', () => {
    const points = spots(normals(12), 0.4)
    const { surface, accuracy } = known({ kind: 'levels', points }, 1, errorsOf(0.02, 0.05))
    for (const [cell, share] of surface.share.entries()) {
      if (!(share > 0)) continue
      expect(accuracy.levelSdM[cell]).toBeGreaterThan(0)
      expect(accuracy.slopeSdDeg[cell]).toBeGreaterThan(0)
      expect(accuracy.slopeSdDeg[cell]).toBeLessThan(90)
    }
  })

  it('are not called small at a wall (common practice, no source)', () => {
    const flat = levels(
      [0, 0, 5],
      [20, 0, 5],
      [20, 9.9, 5],
      [0, 9.9, 5],
      [0, 10.1, 7],
      [20, 10.1, 7],
      [20, 20, 7],
      [0, 20, 7],
    )
    const wall = {
      id: 'w',
      kind: 'wall' as const,
      vertices: [
        { eastM: 2, northM: 10, leftM: 7, rightM: 5 },
        { eastM: 18, northM: 10, leftM: 7, rightM: 5 },
      ],
    }
    const plain = known(flat, 1, errorsOf(0.01))
    const { surface } = plain
    const walled = known({ ...flat, breaklines: [wall] }, 1, errorsOf(0.01)).accuracy
    const at = (eastM: number, northM: number) =>
      (surface.frame.rows - 1 - Math.floor(northM - surface.frame.southM)) * surface.frame.columns +
      Math.floor(eastM - surface.frame.westM)
    expect(walled.levelSdM[at(10.5, 10.5)]).toBeGreaterThanOrEqual(1)
    expect(walled.slopeSdDeg[at(10.5, 10.5)]).toBeGreaterThanOrEqual(44.9)
    expect(walled.levelSdM[at(10.5, 2.5)]).toBeLessThan(0.1)
  })

  it('drift with the distance levelled, where the method says so', () => {
    const plane = levels([0, 0, 0], [30, 0, -9], [30, 30, -9], [0, 30, 0])
    const { surface, accuracy } = known(plane, 1, { ...errorsOf(1e-6), levelSdPerM: 0.01 })
    const far = surface.frame.columns - 1
    const { eastM, northM } = { eastM: 29.5, northM: 29.5 }
    expect(accuracy.levelSdM[far]).toBeCloseTo(0.01 * Math.hypot(eastM, northM), 4)
  })
})

describe('errors of zones', () => {
  const grid: GridSurvey = {
    kind: 'grid',
    columns: 20,
    rows: 20,
    cellM: 1,
    westM: 0,
    southM: 0,
    levelsM: Array.from({ length: 400 }, (_, at) => 20 - 0.3 * (at % 20)),
  }

  it('on a grid are those of its cells, however many there are: shared errors do not average out (JCGM 100:2008, 5.2.2)', () => {
    const { surface, terrain, accuracy } = known(grid, 1, errorsOf(0.1))
    const inner = innerCells(surface)
    const zoneOfCell = new Int16Array(surface.share.length).fill(-1)
    inner.forEach((cell, at) => (zoneOfCell[cell] = at < 10 ? 0 : 1))
    const [few, many] = zoneSlopeErrors(
      { zoneOfCell, count: 2, surface, slopeDeg: terrain.slopeDeg },
      { ground: grid, errors: errorsOf(0.1), accuracy },
    )
    expect(many!.meanDeg).toBeCloseTo(few!.meanDeg, 5)
    expect(many!.steepDeg).toBeCloseTo(accuracy.slopeSdDeg[inner[0]!]!, 5)
  })

  it('on triangles, one plane through three points has the error of any of its cells (exact)', () => {
    const plane = levels([0, 0, 10], [12, 0, 4], [0, 12, 10])
    const errors = errorsOf(0.02)
    const { surface, terrain, accuracy } = known(plane, 0.5, errors)
    const zoneOfCell = new Int16Array(surface.share.length).fill(0)
    const [only] = zoneSlopeErrors(
      { zoneOfCell, count: 1, surface, slopeDeg: terrain.slopeDeg },
      { ground: plane, errors, accuracy },
    )
    const exact = ((Math.SQRT2 * 0.02) / 12 / (1 + 0.25)) * (180 / Math.PI)
    expect(only!.meanDeg).toBeCloseTo(exact, 6)
  })

  it('refuse a zone without a cell', () => {
    const { surface, terrain, accuracy } = known(grid, 1, errorsOf(0.1))
    const zoneOfCell = new Int16Array(surface.share.length).fill(-1)
    expect(() =>
      zoneSlopeErrors(
        { zoneOfCell, count: 1, surface, slopeDeg: terrain.slopeDeg },
        { ground: grid, errors: errorsOf(0.1), accuracy },
      ),
    ).toThrow(RangeError)
  })
})

describe('a limit within reach (JCGM 100:2008, 6.3.3: two standard errors hold about 95 %)', () => {
  it('lies within two standard errors to either side, ends included', () => {
    expect(withinReach(22, 25, 1.5)).toBe(true)
    expect(withinReach(22, 25, 1.49)).toBe(false)
    expect(withinReach(28, 25, 1.5)).toBe(true)
    expect(withinReach(25, 25, 0)).toBe(false)
  })

  it('refuses an error below 0', () => {
    expect(() => withinReach(22, 25, -1)).toThrow(RangeError)
    expect(() => withinReach(22, 25, Number.NaN)).toThrow(RangeError)
  })
})
