import { describe, expect, it } from 'vitest'
import { signedAreaM2 } from '#core/geometry'
import { surfaceFrom } from '#core/survey'
import { leavingOf, lineLengthM, terrainOf } from '#core/terrain'
import { surfaceOf } from './grids'
import { tolerances } from './tolerances'
import { hilly, squarePlot, turnedPlot, turnings } from './turned'
import { volcanoSurface } from './volcano'

describe('water that leaves the plot', () => {
  it.each([0, 33, 100, 215, 300])(
    'exact solution: all of a bank facing %i° leaves over its foot, along the whole of it',
    (facesDeg) => {
      const bank = surfaceFrom({ kind: 'bank', lengthM: 13, riseM: 5, facesDeg, widthM: 21 })
      if (!bank.ok) throw new Error('a plain bank must do')
      const [stretch, ...others] = leavingOf(bank.value, terrainOf(bank.value), [])
      expect(others).toEqual([])
      expect(stretch?.share).toBeCloseTo(1, 9)
      expect(stretch?.areaM2).toBeCloseTo(12 * 21, 6)
      expect(stretch?.beyondId).toBeUndefined()
      const [east, north] = [Math.sin((facesDeg * Math.PI) / 180), Math.cos((facesDeg * Math.PI) / 180)]
      // A pointed corner is resolved to two cells, here counted across.
      const cornerM = tolerances.cornerCells * Math.SQRT2 * bank.value.frame.cellM
      for (const { eastM, northM } of stretch?.line ?? [])
        expect(Math.abs(eastM * east + northM * north - 6)).toBeLessThan(cornerM)
      expect(lineLengthM(stretch?.line ?? [])).toBeGreaterThan(20)
    },
  )

  it('exact solution: a foot half neighbour, half road is told apart, half the water each', () => {
    const plane = surfaceOf({ columns: 40, rows: 20, cellM: 1 }, (_e, n) => 0.2 * n)
    const corner = (eastM: number) => ({ eastM, northM: -10 })
    const eastwards = signedAreaM2(plane.boundary) > 0
    const [start, end] = eastwards ? [-20, 20] : [20, -20]
    const told = leavingOf(plane, terrainOf(plane), [
      { id: 'neighbour', from: corner(start), to: corner(0) },
      { id: 'road', from: corner(0), to: corner(end) },
    ])
    expect(told.map(({ beyondId }) => beyondId).sort()).toEqual(['neighbour', 'road'])
    for (const { share, areaM2 } of told) {
      expect(share).toBeCloseTo(0.5, 9)
      expect(areaM2).toBeCloseTo(400, 6)
    }
  })

  it('exact solution: a gully gathers what leaves, and there is where most of it does', () => {
    const gully = surfaceOf({ columns: 41, rows: 41, cellM: 1 }, (e, n) => 0.5 * Math.abs(e) + 0.1 * n)
    const [stretch] = leavingOf(gully, terrainOf(gully), [])
    expect(stretch?.at.northM).toBe(-20.5)
    expect(Math.abs(stretch?.at.eastM ?? 9)).toBeLessThan(1.1)
  })

  it('property: what leaves the volcano’s plot adds up to it', () => {
    const surface = volcanoSurface()
    const told = leavingOf(surface, terrainOf(surface), [])
    const sum = told.reduce((total, { share }) => total + share, 0)
    expect(sum).toBeGreaterThan(0.98)
    expect(sum).toBeLessThanOrEqual(1 + 1e-9)
  })

  it.each(turnings)('property: from a plot %s the same shares leave', (_name, turn) => {
    const shares = (plot: ReturnType<typeof squarePlot>) =>
      leavingOf(plot, terrainOf(plot), []).map(({ share }) => share.toFixed(6))
    expect(shares(turnedPlot(31, hilly, turn))).toEqual(shares(squarePlot(31, hilly)))
  })
})
