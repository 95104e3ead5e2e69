import { describe, expect, it } from 'vitest'
import type { Surface } from '#core/survey'
import { terrainOf, type Terrain } from '#core/terrain'
import { truth, volcanoFigures } from './truth'
import { readGrid } from '../../truth/read-grid'
import { cellsOf, surfaceOf, windowSurface } from './grids'
import { spearman } from './rank-correlation'
import { tolerances } from './tolerances'
import { volcanoSurface } from './volcano'

/** Shares of one cell by receiving cell. */
function sharesOf({ flow }: Terrain, cell: number): Map<number, number> {
  const shares = new Map<number, number>()
  for (let link = flow.starts[cell] ?? 0; link < (flow.starts[cell + 1] ?? 0); link++)
    shares.set(flow.to[link] ?? -1, flow.share[link] ?? 0)
  return shares
}

/** Upslope areas of the cells whose centres lie about so far from the middle of a 101 × 101 grid of 1 m cells. */
function ringAround(surface: Surface, radiusM: number): number[] {
  const { upslopeAreaM2 } = terrainOf(surface)
  return cellsOf(surface)
    .filter((cell) => Math.abs(Math.hypot((cell % 101) - 50, Math.floor(cell / 101) - 50) - radiusM) < 0.5)
    .map((cell) => upslopeAreaM2[cell] ?? 0)
}

const interior = (cell: number, columns: number, rows: number) => {
  const [column, row] = [cell % columns, Math.floor(cell / columns)]
  return column > 0 && row > 0 && column < columns - 1 && row < rows - 1
}

describe('hollows', () => {
  it('SAGA fill (Wang and Liu; Barnes, Lehman and Mulla 2014 gives the same): volcano filled alike', () => {
    const surface = volcanoSurface()
    const { filledM } = terrainOf(surface)
    const theirs = readGrid('volcano/saga_filled_m.asc').values
    expect(theirs.length).toBe(filledM.length)
    theirs.forEach((levelM, cell) =>
      expect(Math.abs((filledM[cell] ?? 0) - levelM)).toBeLessThan(tolerances.filledM),
    )
    const raisedM = filledM.map((levelM, cell) => levelM - (surface.levelM[cell] ?? 0))
    expect(raisedM.filter((raise) => raise > 0).length).toBe(volcanoFigures.filledCells)
    expect(Math.max(...raisedM)).toBe(volcanoFigures.deepestFillM)
    expect(raisedM.reduce((sum, raise) => sum + raise * 100, 0)).toBeCloseTo(volcanoFigures.filledVolumeM3)
  })

  it('exact solution: a bowl with one notch fills to the notch and drains through it', () => {
    const bowl = surfaceOf({ columns: 9, rows: 9, cellM: 1 }, (eastM, northM) => {
      if (eastM === 0 && northM < 0) return 2
      return Math.max(Math.abs(eastM), Math.abs(northM))
    })
    const { filledM, upslopeAreaM2 } = terrainOf(bowl)
    expect(filledM[4 * 9 + 4]).toBe(2)
    expect(upslopeAreaM2[8 * 9 + 4]).toBeGreaterThan(20)
  })
})

describe('ways of water', () => {
  it('Freeman 1991 shares of the worked window, exponent 1.1', () => {
    const { levelsM, freemanShares, cellM } = truth.tilted
    const shares = sharesOf(terrainOf(windowSurface({ cellM, levelsM })), 4)
    expect(shares.size).toBe(4)
    expect(Math.abs((shares.get(1) ?? 0) - freemanShares.north)).toBeLessThan(tolerances.share)
    expect(Math.abs((shares.get(2) ?? 0) - freemanShares.northEast)).toBeLessThan(tolerances.share)
    expect(Math.abs((shares.get(5) ?? 0) - freemanShares.east)).toBeLessThan(tolerances.share)
    expect(Math.abs((shares.get(8) ?? 0) - freemanShares.southEast)).toBeLessThan(tolerances.share)
  })

  it('exact solution: on a plane falling south the kth row from the top drains k cells', () => {
    const [columns, rows] = [61, 25]
    const plane = surfaceOf({ columns, rows, cellM: 1 }, (_eastM, northM) => 0.2 * northM)
    const { upslopeAreaM2 } = terrainOf(plane)
    for (let k = 1; k <= rows; k++) expect(upslopeAreaM2[(k - 1) * columns + 30]).toBeCloseTo(k, 9)
  })

  it.each([5, 10, 20, 30, 40])(
    'exact solution: %i m from the top of a cone each metre of contour drains r/2, evenly all round',
    (radiusM) => {
      const cone = surfaceOf({ columns: 101, rows: 101, cellM: 1 }, (e, n) => 60 - 0.3 * Math.hypot(e, n))
      const ring = ringAround(cone, radiusM)
      // A cell counts its own ground too, down to its lower edge half a cell on.
      const exactM2 = (radiusM + 0.5) ** 2 / (2 * radiusM)
      const meanM2 = ring.reduce((sum, areaM2) => sum + areaM2, 0) / ring.length
      expect(Math.abs(meanM2 / exactM2 - 1)).toBeLessThan(tolerances.cone)
      for (const areaM2 of ring) expect(Math.abs(areaM2 / meanM2 - 1)).toBeLessThan(tolerances.cone)
    },
  )

  it('exact solution: in a bowl of radius R with a drain in its middle, r metres out drain (R² - r²) / 2r', () => {
    const [outerM, radiusM] = [49.5, 25]
    const bowl = surfaceOf({ columns: 101, rows: 101, cellM: 1 }, (e, n) => {
      const awayM = Math.hypot(e, n)
      return awayM > outerM || awayM < 1 ? null : 0.3 * awayM
    })
    const ring = ringAround(bowl, radiusM)
    const exactM2 = (outerM ** 2 - (radiusM - 0.5) ** 2) / (2 * radiusM)
    const meanM2 = ring.reduce((sum, areaM2) => sum + areaM2, 0) / ring.length
    expect(Math.abs(meanM2 / exactM2 - 1)).toBeLessThan(tolerances.cone)
  })

  it('exact solution: all the plot’s water leaves it, none is lost and none is made', () => {
    for (const surface of [volcanoSurface(), surfaceOf({ columns: 20, rows: 12, cellM: 2 }, () => 5)]) {
      const terrain = terrainOf(surface)
      const { flow, upslopeAreaM2 } = terrain
      const cells = cellsOf(surface)
      const leavesM2 = cells
        .filter((cell) => flow.starts[cell] === flow.starts[cell + 1])
        .reduce((sum, cell) => sum + (upslopeAreaM2[cell] ?? 0), 0)
      expect(leavesM2 / (cells.length * surface.frame.cellM ** 2)).toBeCloseTo(1, 9)
      const shares = cells.map((cell) => [...sharesOf(terrain, cell).values()].reduce((a, b) => a + b, 0))
      for (const sum of shares) if (sum !== 0) expect(sum).toBeCloseTo(1, 12)
    }
  })

  it('property: every link goes to a cell later in the order, never uphill', () => {
    const { flow, filledM } = terrainOf(volcanoSurface())
    const turn = new Map([...flow.order].map((cell, at) => [cell, at]))
    for (const cell of flow.order)
      for (let link = flow.starts[cell] ?? 0; link < (flow.starts[cell + 1] ?? 0); link++) {
        const other = flow.to[link] ?? -1
        expect(turn.get(other)).toBeGreaterThan(turn.get(cell) ?? Infinity)
        expect(filledM[other]).toBeLessThanOrEqual(filledM[cell] ?? NaN)
      }
  })

  it.each([
    ['SAGA ta_hydrology 0, Freeman 1.1', 'volcano/saga_acc_mfd_cells.asc'],
    ['GRASS r.watershed, multiple flow', 'volcano/grass_acc_mfd_cells.asc'],
  ])('%s: upslope area of the volcano ranks alike', (_name, file) => {
    const surface = volcanoSurface()
    const { upslopeAreaM2 } = terrainOf(surface)
    const theirs = readGrid(file).values
    const cells = cellsOf(surface).filter((cell) => interior(cell, 87, 61))
    const rank = spearman(
      cells.map((cell) => upslopeAreaM2[cell] ?? 0),
      cells.map((cell) => Math.abs(theirs[cell] ?? NaN)),
    )
    expect(rank).toBeGreaterThan(tolerances.rank)
  })

  it.each([
    ['SAGA ta_hydrology 20', 'volcano/saga_twi_mfd.asc'],
    ['GRASS r.watershed tci', 'volcano/grass_tci_mfd.asc'],
  ])('%s: ln(upslope area / width / gradient) ranks alike where the ground slopes', (_name, file) => {
    const surface = volcanoSurface()
    const { upslopeAreaM2, slopeDeg } = terrainOf(surface)
    const theirs = readGrid(file).values
    const cells = cellsOf(surface).filter(
      (cell) => interior(cell, 87, 61) && (slopeDeg[cell] ?? 0) > 0 && !Number.isNaN(theirs[cell]),
    )
    expect(cells.length).toBeGreaterThan(4500)
    const own = cells.map((cell) =>
      Math.log((upslopeAreaM2[cell] ?? 0) / 10 / Math.tan(((slopeDeg[cell] ?? 0) * Math.PI) / 180)),
    )
    expect(
      spearman(
        own,
        cells.map((cell) => theirs[cell] ?? NaN),
      ),
    ).toBeGreaterThan(tolerances.rank)
  })
})
