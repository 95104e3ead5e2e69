import { describe, expect, it } from 'vitest'
import { terrainOf } from '#core/terrain'
import { surfaceOf } from './grids'
import { tolerances } from './tolerances'

const SIDE = 41
const size = { columns: SIDE, rows: SIDE, cellM: 1 }
const middle = ((SIDE - 1) / 2) * SIDE + (SIDE - 1) / 2

describe('bends down and across the slope', () => {
  it('exact solution (Zevenbergen and Thorne 1987 quadratic): a sphere bends by 1/R both ways everywhere', () => {
    const radiusM = 200
    const dome = surfaceOf(size, (eastM, northM) =>
      Math.sqrt(radiusM ** 2 - (eastM + 60) ** 2 - (northM - 45) ** 2),
    )
    const { formDown, formAcross } = terrainOf(dome)
    formDown.forEach((down, cell) => {
      expect(Math.abs(down * radiusM - 1)).toBeLessThan(tolerances.borderCurvature)
      expect(Math.abs((formAcross[cell] ?? 0) * radiusM - 1)).toBeLessThan(tolerances.borderCurvature)
    })
    expect(Math.abs((formDown[middle] ?? 0) * radiusM - 1)).toBeLessThan(tolerances.curvature)
  })

  it('exact solution (Mitasova and Hofierka 1993 formulas): a cone is straight down and bends 1/r across', () => {
    const fall = 0.4
    const nose = surfaceOf(size, (eastM, northM) => 90 - fall * Math.hypot(eastM, northM + 120))
    const { formDown, formAcross } = terrainOf(nose)
    expect(formDown[middle]).toBeCloseTo(0, 5)
    const exact = fall / Math.sqrt(1 + fall ** 2) / 120
    expect((formAcross[middle] ?? 0) / exact).toBeCloseTo(1, 2)
    const hollow = surfaceOf(size, (eastM, northM) => fall * Math.hypot(eastM, northM + 120))
    expect((terrainOf(hollow).formAcross[middle] ?? 0) / exact).toBeCloseTo(-1, 2)
  })

  it('exact solution: a slope that eases downhill is negative, one that steepens is positive', () => {
    const easing = surfaceOf(size, (eastM) => 0.004 * (eastM - 40) ** 2)
    const steepening = surfaceOf(size, (eastM) => -0.004 * (eastM + 40) ** 2)
    const steepness = 0.32
    const exact = 0.008 / (1 + steepness ** 2) ** 1.5
    expect(terrainOf(easing).formDown[middle]).toBeCloseTo(-exact, 6)
    expect(terrainOf(steepening).formDown[middle]).toBeCloseTo(exact, 6)
    expect(terrainOf(easing).formAcross[middle]).toBeCloseTo(0, 9)
  })

  it('exact solution: a plane does not bend, at its border neither', () => {
    const { formDown, formAcross } = terrainOf(surfaceOf(size, (eastM, northM) => 0.3 * eastM - 0.2 * northM))
    for (const bend of [...formDown, ...formAcross]) expect(Math.abs(bend)).toBeLessThan(1e-12)
  })
})
