import { describe, expect, it } from 'vitest'
import { ringAreaM2 } from '#core/geometry'
import { hollowsOf, terrainOf } from '#core/terrain'
import { surfaceOf } from './grids'
import { volcanoFigures } from './truth'
import { hilly, squarePlot, turnedPlot, turnings } from './turned'
import { volcanoSurface } from './volcano'

describe('hollows', () => {
  it('SAGA fill: the volcano’s hollows take in 103 cells and 88,700 m³, the deepest 20 m', () => {
    const surface = volcanoSurface()
    const hollows = hollowsOf(surface, terrainOf(surface).filledM, 0)
    const sum = (pick: (hollow: (typeof hollows)[number]) => number) =>
      hollows.reduce((total, hollow) => total + pick(hollow), 0)
    expect(sum(({ cells }) => cells.length)).toBe(volcanoFigures.filledCells)
    expect(sum(({ volumeM3 }) => volumeM3)).toBeCloseTo(volcanoFigures.filledVolumeM3, 6)
    expect(hollows[0]?.depthM).toBe(volcanoFigures.deepestFillM)
    for (const hollow of hollows) expect(hollow.areaM2).toBeCloseTo(hollow.cells.length * 100, 9)
  })

  it.each([1, 0.5, 0.25])(
    'exact solution: a cone pit of 8 m and 2 m depth in level ground holds πr²h/3, within 1.5 cell sides of its rim (%f m cells)',
    (cellM) => {
      const [radiusM, depthM] = [8, 2]
      const side = Math.round(24 / cellM) + 1
      const pit = surfaceOf({ columns: side, rows: side, cellM }, (eastM, northM) =>
        Math.min(0, -depthM + (depthM / radiusM) * Math.hypot(eastM, northM)),
      )
      const [hollow, ...others] = hollowsOf(pit, terrainOf(pit).filledM, 0)
      expect(others).toEqual([])
      const exactM3 = (Math.PI * radiusM ** 2 * depthM) / 3
      // The mid-point rule errs by the kink at the tip and the ring of cells cut by the rim, there depth/radius a metre deep.
      expect(Math.abs((hollow?.volumeM3 ?? 0) / exactM3 - 1)).toBeLessThan(0.012 * cellM)
      expect(hollow?.depthM).toBeCloseTo(depthM, 12)
      expect(hollow?.lipM).toBe(0)
      expect(hollow?.at.eastM).toBeCloseTo(0, 12)
      const rimM2 = 2 * Math.PI * radiusM * cellM
      expect(Math.abs((hollow?.areaM2 ?? 0) - Math.PI * radiusM ** 2)).toBeLessThan(0.75 * rimM2)
      expect(ringAreaM2(hollow?.ring ?? [])).toBeCloseTo(hollow?.areaM2 ?? 0, 6)
    },
  )

  it('exact solution: a bowl (paraboloid) with a notch holds πR²h/2 up to the notch', () => {
    const [bend, lipM] = [0.01, 2.25]
    const bowl = surfaceOf({ columns: 161, rows: 161, cellM: 0.25 }, (eastM, northM) => {
      const floorM = bend * (eastM ** 2 + northM ** 2)
      return eastM > 0 && Math.abs(northM) < 0.1 ? Math.min(floorM, Math.max(lipM, 0)) : floorM
    })
    const [hollow] = hollowsOf(bowl, terrainOf(bowl).filledM, 0)
    const exactM3 = (Math.PI * (lipM / bend) * lipM) / 2
    expect(hollow?.lipM).toBe(lipM)
    expect(Math.abs((hollow?.volumeM3 ?? 0) / exactM3 - 1)).toBeLessThan(0.005)
  })

  it('two hollows with their own lips stay apart, and shallow ones are left out on request', () => {
    const levels = (eastM: number) => (Math.abs(eastM - 5) < 2 ? 1 : Math.abs(eastM + 5) < 2 ? 1.9 : 2)
    const two = surfaceOf({ columns: 21, rows: 9, cellM: 1 }, (e, n) => (Math.abs(n) < 2 ? levels(e) : 2))
    const { filledM } = terrainOf(two)
    expect(hollowsOf(two, filledM, 0).map(({ depthM }) => Number(depthM.toFixed(6)))).toEqual([1, 0.1])
    expect(hollowsOf(two, filledM, 0.5).length).toBe(1)
  })

  it.each(turnings)('property: a plot %s has the same hollows', (_name, turn) => {
    const measures = (surface: ReturnType<typeof squarePlot>) =>
      hollowsOf(surface, terrainOf(surface).filledM, 0).map(({ depthM, areaM2, volumeM3 }) =>
        [depthM, areaM2, volumeM3].map((value) => value.toFixed(9)),
      )
    const own = measures(squarePlot(31, hilly))
    expect(own.length).toBeGreaterThan(0)
    expect(measures(turnedPlot(31, hilly, turn))).toEqual(own)
  })

  it('refuses a negative least depth', () => {
    const plot = squarePlot(5, () => 0)
    expect(() => hollowsOf(plot, terrainOf(plot).filledM, -1)).toThrow(RangeError)
  })
})
