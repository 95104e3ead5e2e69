import { describe, expect, it } from 'vitest'
import { slopeAreaFactor } from '#core/units'
import { surfaceFrom } from '#core/survey'
import { terrainOf } from '#core/terrain'
import { truth, volcanoFigures } from './truth'
import { readGrid } from '../../truth/read-grid'
import { cellsOf, surfaceOf, windowSurface } from './grids'
import { tolerances } from './tolerances'
import { volcanoSurface } from './volcano'

const MIDDLE = 4
const apartDeg = (one: number, other: number) => Math.abs(((one - other + 540) % 360) - 180)

describe('slope and aspect', () => {
  it('Esri "How Slope works": its window is 75.25762° steep', () => {
    const { slopeDeg, aspectDeg } = terrainOf(windowSurface(truth.esriSlope))
    expect(slopeDeg[MIDDLE]).toBeCloseTo(truth.esriSlope.slopeDeg, 4)
    expect(slopeDeg[MIDDLE]).toBeCloseTo(truth.esriSlope.exactSlopeDeg, 6)
    expect(aspectDeg[MIDDLE]).toBeCloseTo(truth.esriSlope.aspectDeg, 3)
  })

  it('Esri "How Aspect works" (window from memory, answer recomputed): it faces 92.6425°', () => {
    const { aspectDeg } = terrainOf(windowSurface(truth.esriAspect))
    expect(aspectDeg[MIDDLE]).toBeCloseTo(truth.esriAspect.aspectDeg, 6)
  })

  it('Horn 1981 by hand: the tilted window is 30.43990° steep and faces 66.16126°', () => {
    const { slopeDeg, aspectDeg } = terrainOf(windowSurface(truth.tilted))
    expect(slopeDeg[MIDDLE]).toBeCloseTo(truth.tilted.slopeDeg, 5)
    expect(aspectDeg[MIDDLE]).toBeCloseTo(truth.tilted.aspectDeg, 5)
  })

  it('GRASS r.slope.aspect: every interior cell of the volcano has its slope and aspect', () => {
    const { slopeDeg, aspectDeg } = terrainOf(volcanoSurface())
    const slopes = readGrid('volcano/grass_slope_horn_deg.asc').values
    const aspects = readGrid('volcano/grass_aspect_horn_deg.asc').values
    let [compared, worstSlope, worstAspect] = [0, 0, 0]
    slopes.forEach((slope, cell) => {
      if (Number.isNaN(slope)) return
      compared += 1
      worstSlope = Math.max(worstSlope, Math.abs((slopeDeg[cell] ?? 0) - slope))
      const aspect = aspects[cell] ?? 0
      const [own, theirs] = [aspectDeg[cell] ?? 0, aspect]
      worstAspect = Math.max(worstAspect, theirs === -1 ? Math.abs(own + 1) : apartDeg(own, theirs))
    })
    expect(compared).toBe(59 * 85)
    expect(worstSlope).toBeLessThan(tolerances.grassSlopeDeg)
    expect(worstAspect).toBeLessThan(tolerances.grassAspectDeg)
  })

  it('GRASS slopes: the volcano’s interior is 527,284.9 m² on the slope for 501,500 m² on plan', () => {
    const surface = volcanoSurface()
    const { slopeDeg } = terrainOf(surface)
    const { columns, rows, cellM } = surface.frame
    let [slopeM2, planM2] = [0, 0]
    for (let row = 1; row < rows - 1; row++)
      for (let column = 1; column < columns - 1; column++) {
        planM2 += cellM ** 2
        slopeM2 += cellM ** 2 * slopeAreaFactor(slopeDeg[row * columns + column] ?? 0)
      }
    expect(planM2).toBe(volcanoFigures.interiorPlanAreaM2)
    expect(slopeM2).toBeCloseTo(volcanoFigures.interiorTrueAreaM2, 1)
  })

  it.each([0, 17, 45, 90, 133, 180, 217, 271, 359])(
    'exact solution: a plane facing %i° is exact in every cell, up to its border',
    (facesDeg) => {
      const fall = Math.tan((22 * Math.PI) / 180)
      const faces = (facesDeg * Math.PI) / 180
      const surface = surfaceOf(
        { columns: 14, rows: 9, cellM: 0.5 },
        (eastM, northM) => 40 - fall * (eastM * Math.sin(faces) + northM * Math.cos(faces)),
      )
      const { slopeDeg, aspectDeg } = terrainOf(surface)
      for (const cell of cellsOf(surface)) {
        expect(Math.abs((slopeDeg[cell] ?? 0) - 22)).toBeLessThan(tolerances.planeDeg)
        expect(apartDeg(aspectDeg[cell] ?? 0, facesDeg)).toBeLessThan(tolerances.planeDeg)
      }
      expect(apartDeg(surface.facesDeg ?? NaN, facesDeg)).toBeLessThan(tolerances.planeDeg)
    },
  )

  it.each([12, 98, 203, 300])(
    'exact solution: a bank facing %i° has one slope in every cell its edge cuts',
    (facesDeg) => {
      const bank = surfaceFrom({ kind: 'bank', lengthM: 13, riseM: 4, facesDeg, widthM: 21 })
      if (!bank.ok) throw new Error('a plain bank must do')
      const { slopeDeg, aspectDeg } = terrainOf(bank.value)
      for (const cell of cellsOf(bank.value)) {
        expect(Math.abs((slopeDeg[cell] ?? 0) - (Math.asin(4 / 13) * 180) / Math.PI)).toBeLessThan(1e-9)
        expect(apartDeg(aspectDeg[cell] ?? 0, facesDeg)).toBeLessThan(1e-9)
      }
    },
  )

  it('property: turn the plot 90° clockwise and every aspect turns 90°', () => {
    const hump = (eastM: number, northM: number) => Math.sin(eastM / 3) + 0.1 * northM * eastM + northM
    const size = { columns: 11, rows: 11, cellM: 1 }
    const before = terrainOf(surfaceOf(size, hump))
    const after = terrainOf(surfaceOf(size, (eastM, northM) => hump(-northM, eastM)))
    for (let row = 0; row < 11; row++)
      for (let column = 0; column < 11; column++) {
        const [was, now] = [row * 11 + column, column * 11 + (10 - row)]
        expect(after.slopeDeg[now]).toBeCloseTo(before.slopeDeg[was] ?? NaN, 9)
        expect(apartDeg(after.aspectDeg[now] ?? 0, (before.aspectDeg[was] ?? 0) + 90)).toBeLessThan(1e-6)
      }
  })

  it('exact solution: level ground faces nowhere', () => {
    const surface = surfaceOf({ columns: 5, rows: 4, cellM: 1 }, () => 7)
    expect([...terrainOf(surface).aspectDeg]).toEqual(new Array(20).fill(-1))
    expect(surface.facesDeg).toBeUndefined()
  })

  it('exact solution: a cell on its own is level', () => {
    const lonely = surfaceOf({ columns: 9, rows: 9, cellM: 1 }, (eastM, northM) =>
      eastM === 0 && (northM === 0 || northM === 4) ? 5 + northM : null,
    )
    for (const cell of cellsOf(lonely)) {
      expect(terrainOf(lonely).slopeDeg[cell]).toBe(0)
      expect(terrainOf(lonely).aspectDeg[cell]).toBe(-1)
    }
  })

  it('exact solution: a strip one cell wide keeps the slope along it', () => {
    const strip = surfaceOf({ columns: 9, rows: 9, cellM: 1 }, (eastM, northM) =>
      eastM === 0 ? 0.5 * northM : null,
    )
    const { slopeDeg } = terrainOf(strip)
    for (const cell of cellsOf(strip))
      expect(Math.tan(((slopeDeg[cell] ?? 0) * Math.PI) / 180)).toBeCloseTo(0.5, 9)
  })
})
