import { describe, expect, it } from 'vitest'
import { toRadians } from '#core/units'
import { cellPlanes } from '../../../src/core/shade/cell-planes'
import { SKY_DIRECTIONS, skylinesAround } from '../../../src/core/shade/skylines'
import { skyAbove, skyView } from '../../../src/core/shade/sky-view'
import { readGrid } from '../../truth/read-grid'
import { tolerances } from './tolerances'
import { volcano } from './volcano'

const { ground, cells, compared } = volcano()
const theirs = readGrid('volcano/saga_sky_view_factor.asc').values
const SECTORS = 16
const azimuthRad = (sector: number) => (2 * Math.PI * sector) / SECTORS

/** SAGA takes slope and aspect after Zevenbergen & Thorne 1987. */
const sagaPlanes = (() => {
  const none = (value: number) => (Number.isNaN(value) ? 0 : value)
  return cellPlanes({
    slopeDeg: readGrid('volcano/saga_slope_zt_deg.asc').values.map(none),
    aspectDeg: readGrid('volcano/saga_aspect_zt_deg.asc').values.map(none),
  })
})()

/** SAGA's skylines, told in our words: one cell's length at a time, the nearest cell's height over the way walked. */
const sagaSkylines = Array.from({ length: SECTORS }, (_, sector) => {
  const { columns, rows, cellM } = ground.frame
  const [east, north] = [Math.sin(azimuthRad(sector)), Math.cos(azimuthRad(sector))]
  return Float32Array.from(ground.levelM, (own, cell) => {
    let [x, y, rise] = [cell % columns, rows - 1 - Math.floor(cell / columns), 0]
    for (let step = 1; ; step += 1) {
      x += east
      y += north
      const [column, up] = [Math.trunc(x + 0.5), Math.trunc(y + 0.5)]
      if (column < 0 || up < 0 || column >= columns || up >= rows) return rise
      rise = Math.max(rise, (ground.levelM[(rows - 1 - up) * columns + column]! - own) / (step * cellM))
    }
  })
})

/** How far a sky lies from SAGA's, cell by cell. */
const off = (view: ArrayLike<number>) => compared.map((cell) => Math.abs(view[cell]! - theirs[cell]!))
const mean = (list: readonly number[]) => list.reduce((sum, one) => sum + one, 0) / list.length

/** A cell's own plane towards a sector: upright and outward part of the direction square to it. */
function plane(cell: number, sector: number) {
  const { east, north, up } = sagaPlanes
  const outward = east[cell]! * Math.sin(azimuthRad(sector)) + north[cell]! * Math.cos(azimuthRad(sector))
  return { upright: up[cell]!, outward }
}

describe('SAGA sky view factor on a real hill (integral of Dozier & Frew 1990), 16 sectors', () => {
  it('from SAGA’s slopes and skylines: every one of 5011 cells to its four printed digits', () => {
    const view = ground.levelM.map((_, cell) =>
      mean(
        sagaSkylines.map((skyline, sector) => {
          const { upright, outward } = plane(cell, sector)
          return skyAbove(skyline[cell]!, upright, outward)
        }),
      ),
    )
    expect(compared.length).toBe(5011)
    expect(Math.max(...off(view))).toBeLessThan(tolerances.skyFormula)
  })

  it('the sky stops at the cell’s own plane with us, not with SAGA: within 0.01 on all but 22 cells, whose plane stands well above the skyline behind them', () => {
    const view = skyView(sagaSkylines, sagaPlanes)
    const away = off(view)
    const apart = compared.filter((_, at) => away[at]! > tolerances.skyView)
    expect(apart.length).toBe(22)
    for (const cell of apart) {
      const overRad = sagaSkylines.map((skyline, sector) => {
        const { upright, outward } = plane(cell, sector)
        return Math.atan(-outward / upright) - Math.atan(skyline[cell]!)
      })
      expect(Math.max(...overRad)).toBeGreaterThan(toRadians(5))
      expect(view[cell]).toBeGreaterThan(theirs[cell]!)
    }
    expect(mean(away)).toBeLessThan(0.0005)
  })

  it('our own slopes and skylines, as many as the product takes: on average and at the worst cell', () => {
    const away = off(skyView(skylinesAround(ground, SKY_DIRECTIONS), cellPlanes(cells)))
    expect(mean(away)).toBeLessThan(tolerances.skyOwnMean)
    expect(Math.max(...away)).toBeLessThan(0.04)
  })
})
