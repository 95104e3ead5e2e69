import { describe, expect, it } from 'vitest'
import { groundFacts } from '#core/terrain'
import { standingClasses } from '../../../src/core/terrain/standing-classes'
import { neighbourhood } from '../../../src/core/terrain/neighbours'
import { readGrid } from '../../truth/read-grid'
import { cellsOf, surfaceOf, windowSurface } from './grids'
import { tolerances } from './tolerances'
import { truth } from './truth'
import { volcanoSurface } from './volcano'

describe('topographic position', () => {
  it.each([3, 10])(
    'SAGA ta_morphometry 18: every cell of the volcano, radius %i, centre counted',
    (radius) => {
      const index = groundFacts(volcanoSurface()).standing(radius)
      const theirs = readGrid(`volcano/saga_tpi_r${radius}_m.asc`).values
      let [compared, worst] = [0, 0]
      theirs.forEach((value, cell) => {
        if (Number.isNaN(value)) return
        compared += 1
        worst = Math.max(worst, Math.abs((index[cell] ?? NaN) - value))
      })
      expect(compared).toBe(5307)
      expect(worst).toBeLessThan(tolerances.standingM)
    },
  )

  it.each([1, 1.5, 2, 3.7, 6])(
    'exact solution (Guisan, Weiss and Weiss 1999 index): z = k (x² + y²) stands -k times the window’s mean square, radius %d',
    (radius) => {
      const k = 0.013
      const surface = surfaceOf({ columns: 21, rows: 21, cellM: 0.5 }, (e, n) => k * (e * e + n * n))
      let [squares, count] = [0, 0]
      for (let x = -6; x <= 6; x++)
        for (let y = -6; y <= 6; y++)
          if (x * x + y * y <= radius * radius) {
            squares += 0.25 * (x * x + y * y)
            count += 1
          }
      const index = groundFacts(surface).standing(radius)
      for (const row of [8, 10, 12])
        for (const column of [8, 10, 13])
          expect(index[row * 21 + column]).toBeCloseTo((-k * squares) / count, 12)
    },
  )

  it('by hand: with its centre counted the window of nine stands 8/9 of what it stands over its eight neighbours', () => {
    const index = groundFacts(windowSurface(truth.tilted)).standing(1.5)
    expect(index[4]).toBeCloseTo((truth.tilted.tpiEightM * 8) / 9, 12)
  })

  it('refuses a window smaller than a cell and its neighbours', () => {
    const facts = groundFacts(windowSurface(truth.tilted))
    expect(() => facts.standing(0.5)).toThrow(RangeError)
    expect(() => facts.standing(NaN)).toThrow(RangeError)
    expect(() => facts.standing(Infinity)).toThrow(RangeError)
  })
})

describe('classes of standing', () => {
  it('Weiss 2001: bounds at 1 and 0.5 standard deviations, flat up to 5°', () => {
    const surface = surfaceOf({ columns: 8, rows: 1, cellM: 1 }, (e) => e)
    const hood = neighbourhood(surface)
    // Mean 0 and standard deviation 1.
    const far = 1.5
    const near = Math.sqrt((8 - 2 * far ** 2 - 2 * 0.75 ** 2) / 2)
    const index = Float64Array.from([far, near, 0.75, 0, 0, -0.75, -near, -far])
    const slopeDeg = Float64Array.from([9, 9, 9, 9, 5, 9, 9, 9])
    expect(near).toBeGreaterThan(1)
    expect([...standingClasses(index, slopeDeg, hood)]).toEqual([1, 1, 2, 3, 4, 5, 6, 6])
  })

  it('exact solution: an even slope is all middle slope within reach of its windows, a level plot all flat', () => {
    const slope = groundFacts(surfaceOf({ columns: 30, rows: 30, cellM: 1 }, () => 4)).standings()
    for (const { classes } of [slope.small, slope.large]) expect(new Set(classes)).toEqual(new Set([4]))
  })

  it('exact solution: the top of a dome is a ridge and the middle of a bowl a valley, at both scales', () => {
    const size = { columns: 65, rows: 65, cellM: 1 }
    const middle = 32 * 65 + 32
    const hill = (e: number, n: number) => 8 * Math.exp(-(e * e + n * n) / 60)
    const dome = groundFacts(surfaceOf(size, hill)).standings()
    const bowl = groundFacts(surfaceOf(size, (e, n) => -hill(e, n))).standings()
    for (const scale of ['small', 'large'] as const) {
      expect(dome[scale].classes[middle]).toBe(1)
      expect(bowl[scale].classes[middle]).toBe(6)
    }
    expect(dome.small.radiusM).toBeLessThan(dome.large.radiusM)
  })

  it('every cell of the plot has a class, none outside it', () => {
    const surface = surfaceOf({ columns: 12, rows: 12, cellM: 1 }, (e, n) => (e > 2 ? null : Math.sin(e) + n))
    const { small } = groundFacts(surface).standings()
    const inside = new Set(cellsOf(surface))
    small.classes.forEach((one, cell) => expect(one > 0).toBe(inside.has(cell)))
  })
})
