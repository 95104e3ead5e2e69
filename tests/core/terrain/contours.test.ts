import { describe, expect, it } from 'vitest'
import { surfaceFrom } from '#core/survey'
import { contoursOf, contourStepM, lineLengthM, terrainOf } from '#core/terrain'
import { surfaceOf } from './grids'
import { hilly, squarePlot, turnedPlot, turnings } from './turned'

describe('contours', () => {
  it.each([
    [0, 0.01],
    [0.1, 0.01],
    [0.3, 0.025],
    [1, 0.1],
    [3.4, 0.25],
    [6, 0.5],
    [20, 2],
    [33, 2.5],
    [300, 25],
    [1200, 100],
  ])('common practice, no source: %f m of fall is drawn every %f m', (fallM, stepM) => {
    expect(contourStepM(fallM)).toBe(stepM)
  })

  it.each([0, 25, 90, 160, 217, 311])(
    'exact solution: on a plane facing %i° they are straight, level to 1e-9 m and reach the boundary',
    (facesDeg) => {
      const bank = surfaceFrom({ kind: 'bank', lengthM: 13, riseM: 5, facesDeg, widthM: 21 })
      if (!bank.ok) throw new Error('a plain bank must do')
      const surface = bank.value
      const contours = contoursOf(surface, terrainOf(surface), 0.5)
      const [east, north] = [Math.sin((facesDeg * Math.PI) / 180), Math.cos((facesDeg * Math.PI) / 180)]
      const inner = contours.filter(
        ({ levelM }) => levelM > surface.lowestM + 0.01 && levelM < surface.highestM - 0.01,
      )
      expect(inner.map(({ levelM }) => levelM)).toEqual(
        [0.5, 1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5].map((up) => up + surface.lowestM),
      )
      // 13 m along a bank that rises 5 m are 12 m in plan.
      const foot = Math.max(...surface.boundary.map(({ eastM, northM }) => eastM * east + northM * north))
      for (const { levelM, lines } of inner) {
        expect(lines.length).toBe(1)
        expect(lineLengthM(lines[0] ?? [])).toBeCloseTo(21, 9)
        for (const { eastM, northM } of lines[0] ?? [])
          expect(surface.lowestM + ((foot - eastM * east - northM * north) * 5) / 12).toBeCloseTo(levelM, 9)
      }
    },
  )

  it('exact solution: on a cone they are closed rings of the right radius, within h²/8r of the chord', () => {
    const cone = surfaceOf({ columns: 61, rows: 61, cellM: 0.5 }, (e, n) => 10 - 0.5 * Math.hypot(e, n))
    const contours = contoursOf(cone, terrainOf(cone), 1)
    const six = contours.find(({ levelM }) => levelM === 6)
    expect(six?.lines.length).toBe(1)
    const [ring] = six?.lines ?? []
    expect(ring?.[0]).toEqual(ring?.at(-1))
    for (const { eastM, northM } of ring ?? [])
      expect(Math.abs(Math.hypot(eastM, northM) - 8)).toBeLessThan(0.5 ** 2 / (8 * 8) + 1e-9)
    // A polygon of chords is shorter than the circle by less than 1 part in 1000.
    expect(lineLengthM(ring ?? []) / (2 * Math.PI * 8)).toBeCloseTo(1, 3)
  })

  it('two knolls have a ring each at the height of both, and one around them lower down', () => {
    const knoll = (e: number, n: number, at: number) => Math.exp(-((e - at) ** 2 + n ** 2) / 8)
    const two = surfaceOf({ columns: 61, rows: 41, cellM: 0.5 }, (e, n) => knoll(e, n, 5) + knoll(e, n, -5))
    const at = (levelM: number) =>
      contoursOf(two, terrainOf(two), 0.01).find((line) => Math.abs(line.levelM - levelM) < 1e-9)?.lines
        .length
    expect(at(0.5)).toBe(2)
    expect(at(0.05)).toBe(1)
  })

  it.each(turnings)('property: on a plot %s each level is as long', (_name, turn) => {
    const lengths = (surface: ReturnType<typeof squarePlot>) =>
      contoursOf(surface, terrainOf(surface), 0.5).map(({ levelM, lines }) => [
        levelM,
        Number(lines.reduce((sum, line) => sum + lineLengthM(line), 0).toFixed(6)),
      ])
    expect(lengths(turnedPlot(31, hilly, turn))).toEqual(lengths(squarePlot(31, hilly)))
  })

  it('refuses a step of nothing and a flood of lines', () => {
    const plot = squarePlot(5, ({ northM }) => northM)
    expect(() => contoursOf(plot, terrainOf(plot), 0)).toThrow(RangeError)
    expect(() => contoursOf(plot, terrainOf(plot), 1e-6)).toThrow(RangeError)
    expect(() => contourStepM(-1)).toThrow(RangeError)
  })
})
