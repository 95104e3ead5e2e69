import { describe, expect, it } from 'vitest'
import { cellCentre } from '#core/geometry'
import { catchmentOf, terrainOf } from '#core/terrain'
import { cellsOf, surfaceOf } from './grids'
import { volcanoSurface } from './volcano'

describe('the ground that drains to a place', () => {
  it('exact solution: on a plane falling south each row above hands its water on whole, in a widening fan', () => {
    const plane = surfaceOf({ columns: 61, rows: 25, cellM: 1 }, (_e, n) => 0.2 * n)
    const terrain = terrainOf(plane)
    const found = catchmentOf(plane, terrain, { eastM: 0, northM: -2 })
    // Row 14 from the top: 15 rows drain, as much from each as one cell holds.
    expect(found?.areaM2).toBeCloseTo(15, 9)
    for (let row = 0; row < 25; row++) {
      const ofRow = found?.share.slice(row * 61, row * 61 + 61).reduce((sum, share) => sum + share, 0)
      expect(ofRow).toBeCloseTo(row <= 14 ? 1 : 0, 9)
    }
  })

  it('exact solution: a bowl drains whole through its outlet', () => {
    const bowl = surfaceOf({ columns: 9, rows: 9, cellM: 1 }, (eastM, northM) => {
      if (Math.max(Math.abs(eastM), Math.abs(northM)) === 4) return eastM === 0 && northM < 0 ? -3 : 9
      return eastM === 0 && northM < 0 ? northM / 2 : Math.max(Math.abs(eastM), Math.abs(northM))
    })
    const terrain = terrainOf(bowl)
    const leaves = cellsOf(bowl).filter((cell) => terrain.flow.starts[cell] === terrain.flow.starts[cell + 1])
    const wholeM2 = leaves.reduce(
      (sum, cell) => sum + (catchmentOf(bowl, terrain, cellCentre(bowl.frame, cell))?.areaM2 ?? 0),
      0,
    )
    expect(wholeM2).toBeCloseTo(81, 9)
    const outlet = catchmentOf(bowl, terrain, { eastM: 0, northM: -4 })
    expect(outlet?.areaM2).toBeGreaterThan(45)
  })

  it('property: the catchments of all places where water leaves add up to the plot, cell by cell', () => {
    const surface = volcanoSurface()
    const terrain = terrainOf(surface)
    const sum = new Float64Array(surface.share.length)
    for (const cell of cellsOf(surface)) {
      if (terrain.flow.starts[cell] !== terrain.flow.starts[cell + 1]) continue
      catchmentOf(surface, terrain, cellCentre(surface.frame, cell))?.share.forEach(
        (share, at) => (sum[at] = (sum[at] ?? 0) + share),
      )
    }
    for (const share of sum) expect(share).toBeCloseTo(1, 9)
  })

  it('property: its area is the upslope area of its cell', () => {
    const surface = volcanoSurface()
    const terrain = terrainOf(surface)
    for (const cell of [100, 1777, 2500, 4001])
      expect(catchmentOf(surface, terrain, cellCentre(surface.frame, cell))?.areaM2).toBeCloseTo(
        terrain.upslopeAreaM2[cell] ?? 0,
        6,
      )
    expect(catchmentOf(surface, terrain, { eastM: 1e6, northM: 0 })).toBeUndefined()
  })
})
