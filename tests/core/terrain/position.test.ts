import { describe, expect, it } from 'vitest'
import { cellCentre } from '#core/geometry'
import { surfaceFrom } from '#core/survey'
import { terrainOf } from '#core/terrain'
import { readGrid } from '../../truth/read-grid'
import { cellsOf, surfaceOf } from './grids'
import { spearman } from './rank-correlation'
import { tolerances } from './tolerances'
import { volcanoSurface } from './volcano'

describe('height above the foot and position', () => {
  it.each([0, 30, 135, 217, 340])(
    'exact solution: on a bank facing %i° the position is the distance from the foot over the length',
    (facesDeg) => {
      const bank = surfaceFrom({ kind: 'bank', lengthM: 13, riseM: 5, facesDeg, widthM: 21 })
      if (!bank.ok) throw new Error('a plain bank must do')
      const { position, heightAboveFootM } = terrainOf(bank.value)
      const faces = (facesDeg * Math.PI) / 180
      for (const cell of cellsOf(bank.value)) {
        const { eastM, northM } = cellCentre(bank.value.frame, cell)
        const downM = 6 + eastM * Math.sin(faces) + northM * Math.cos(faces)
        expect(position[cell]).toBeCloseTo(Math.min(1, Math.max(0, 1 - downM / 12)), 9)
        expect(heightAboveFootM[cell]).toBeCloseTo(Math.max(0, 5 * (1 - downM / 12)), 9)
      }
    },
  )

  it('property: water never flows to a higher position', () => {
    const { flow, position } = terrainOf(volcanoSurface())
    for (const cell of flow.order)
      for (let link = flow.starts[cell] ?? 0; link < (flow.starts[cell + 1] ?? 0); link++)
        expect(position[flow.to[link] ?? -1]).toBeLessThanOrEqual((position[cell] ?? NaN) + 1e-12)
  })

  it('SAGA normalized height: positions on the volcano rank alike', () => {
    const surface = volcanoSurface()
    const { position } = terrainOf(surface)
    const theirs = [...readGrid('volcano/saga_normalized_height.asc').values]
    expect(spearman([...position], theirs)).toBeGreaterThan(tolerances.rank)
  })

  it('exact solution: a level plot has neither foot nor crest', () => {
    const { position, heightAboveFootM } = terrainOf(surfaceOf({ columns: 6, rows: 6, cellM: 1 }, () => 3))
    expect(new Set(position)).toEqual(new Set([0.5]))
    expect(new Set(heightAboveFootM)).toEqual(new Set([0]))
  })

  it('exact solution: on a plane cut to a triangle the position is the level between its lowest and highest corner', () => {
    const corner = (eastM: number, northM: number) => ({ eastM, northM, levelM: 2 + 0.3 * northM })
    const triangle = surfaceFrom({ kind: 'levels', points: [corner(-8, 0), corner(5, 9), corner(7, -11)] })
    if (!triangle.ok) throw new Error('three levels must do')
    const { position } = terrainOf(triangle.value)
    const withinM = (tolerances.cornerCells * triangle.value.frame.cellM) / 20
    for (const cell of cellsOf(triangle.value)) {
      const { northM } = cellCentre(triangle.value.frame, cell)
      expect(Math.abs((position[cell] ?? NaN) - Math.min(1, Math.max(0, (northM + 11) / 20)))).toBeLessThan(
        withinM,
      )
    }
  })

  it('exact solution: a bump low on a long slope stays low', () => {
    const surface = surfaceOf({ columns: 21, rows: 101, cellM: 1 }, (eastM, northM) => {
      const bump = 0.6 * Math.exp(-(eastM ** 2 + (northM + 40) ** 2) / 4)
      return 0.2 * northM + bump
    })
    const { position } = terrainOf(surface)
    const onBump = position[90 * 21 + 10] ?? NaN
    expect(onBump).toBeLessThan(0.35)
    expect(position[10]).toBeGreaterThan(0.98)
  })
})
