import { describe, expect, it } from 'vitest'
import { dropPath, lineLengthM, steepestLine, terrainOf } from '#core/terrain'
import { surfaceOf } from './grids'
import { hilly, squarePlot, turnedPlot, turnings } from './turned'
import { volcanoSurface } from './volcano'

const size = { columns: 41, rows: 41, cellM: 1 }

describe('the path of a drop', () => {
  it.each([0, 30, 45, 135, 200, 291])(
    'exact solution: on a plane facing %i° it is the straight line down to the boundary',
    (facesDeg) => {
      const [east, north] = [Math.sin((facesDeg * Math.PI) / 180), Math.cos((facesDeg * Math.PI) / 180)]
      const plane = surfaceOf(size, (e, n) => 20 - 0.25 * (e * east + n * north))
      const at = { eastM: 1.3, northM: -2.2 }
      const path = dropPath(plane, terrainOf(plane), at)
      const end = path?.points.at(-1)
      expect(path?.ends).toBe('boundary')
      // Where the straight line meets the square of 41 m.
      const toSideM = (from: number, way: number) =>
        way === 0 ? Infinity : (Math.sign(way) * 20.5 - from) / way
      const lengthM = Math.min(toSideM(at.eastM, east), toSideM(at.northM, north))
      expect(path?.lengthM).toBeCloseTo(lengthM, 9)
      expect(end?.eastM).toBeCloseTo(at.eastM + lengthM * east, 9)
      expect(end?.northM).toBeCloseTo(at.northM + lengthM * north, 9)
      for (const point of path?.points ?? [])
        expect(point.levelM).toBeCloseTo(20 - 0.25 * (point.eastM * east + point.northM * north), 9)
    },
  )

  it.each([10, 33, 77, 118, 250, 345])(
    'exact solution: on a cone it is the radius, at %i°, within a tenth of a cell from 4 cells out',
    (bearingDeg) => {
      const cone = surfaceOf(size, (e, n) => 30 - 0.3 * Math.hypot(e, n))
      const [east, north] = [Math.sin((bearingDeg * Math.PI) / 180), Math.cos((bearingDeg * Math.PI) / 180)]
      const path = dropPath(cone, terrainOf(cone), { eastM: 4 * east, northM: 4 * north })
      expect(path?.ends).toBe('boundary')
      for (const { eastM, northM } of path?.points ?? [])
        expect(Math.abs(eastM * north - northM * east)).toBeLessThan(0.1)
    },
  )

  it('exact solution: over a hollow it goes on from the lip, at the lip’s level', () => {
    const bowl = surfaceOf({ columns: 9, rows: 9, cellM: 1 }, (eastM, northM) => {
      if (eastM === 0 && northM < 0) return 2
      return Math.max(Math.abs(eastM), Math.abs(northM))
    })
    const path = dropPath(bowl, terrainOf(bowl), { eastM: 0.2, northM: 2.9 })
    expect(path?.ends).toBe('boundary')
    expect(path?.points.at(-1)?.northM).toBe(-4.5)
    expect(path?.points.at(-1)?.levelM).toBeLessThanOrEqual(2)
  })

  it('on level ground it stands, off the plot there is none', () => {
    const level = squarePlot(9, () => 3)
    expect(dropPath(level, terrainOf(level), { eastM: 0, northM: 0 })).toEqual({
      points: [{ eastM: 0, northM: 0, levelM: 3 }],
      lengthM: 0,
      ends: 'stands',
    })
    expect(dropPath(level, terrainOf(level), { eastM: 90, northM: 0 })).toBeUndefined()
  })

  it('property: from every cell of the volcano it ends on the boundary and never climbs, but where nothing is lower', () => {
    const surface = volcanoSurface()
    const terrain = terrainOf(surface)
    const { frame } = surface
    const lowestM = Math.min(...terrain.filledM)
    for (let cell = 0; cell < surface.share.length; cell += 37) {
      const at = {
        eastM: frame.westM + ((cell % frame.columns) + 0.4) * frame.cellM,
        northM: frame.southM + (frame.rows - Math.floor(cell / frame.columns) - 0.3) * frame.cellM,
      }
      const path = dropPath(surface, terrain, at)
      const points = path?.points ?? []
      if (path?.ends === 'stands') expect(points[0]?.levelM).toBe(lowestM)
      else expect(path?.ends).toBe('boundary')
      points.forEach((point, turn) => {
        expect(point.levelM).toBeLessThanOrEqual((points[turn - 1] ?? point).levelM + 1e-9)
      })
      expect(path?.lengthM).toBeCloseTo(lineLengthM(points), 9)
    }
  })

  it.each(turnings)('property: on a plot %s it is turned alike', (_name, turn) => {
    const at = { eastM: -7.3, northM: 9.1 }
    const plain = squarePlot(31, hilly)
    const other = turnedPlot(31, hilly, turn)
    const own = dropPath(plain, terrainOf(plain), at)
    const turned = dropPath(other, terrainOf(other), turn(at))
    expect(own?.points.length).toBeGreaterThan(10)
    expect(turned?.points.length).toBe(own?.points.length)
    own?.points.forEach((point, index) => {
      expect(turned?.points[index]?.eastM).toBeCloseTo(turn(point).eastM, 6)
      expect(turned?.points[index]?.northM).toBeCloseTo(turn(point).northM, 6)
    })
  })
})

describe('the steepest line', () => {
  it('exact solution: on a plane it is the straight line from edge to edge through the place', () => {
    const plane = surfaceOf(size, (_e, n) => 0.2 * n)
    const line = steepestLine(plane, terrainOf(plane), { eastM: 3.1, northM: 2 })
    expect(line?.lengthM).toBeCloseTo(41, 6)
    expect(line?.fallM).toBeCloseTo(8.2, 6)
    expect(line?.placeM).toBeCloseTo(18.5, 6)
    for (const { eastM } of line?.points ?? []) expect(eastM).toBeCloseTo(3.1, 9)
  })

  it('exact solution: on a cone it comes from its top', () => {
    const cone = surfaceOf(size, (e, n) => 30 - 0.3 * Math.hypot(e, n))
    const line = steepestLine(cone, terrainOf(cone), { eastM: 6, northM: 7.5 })
    const top = line?.points[0]
    expect(Math.hypot(top?.eastM ?? 99, top?.northM ?? 99)).toBeLessThan(1)
    expect(steepestLine(cone, terrainOf(cone), { eastM: 60, northM: 0 })).toBeUndefined()
  })
})
