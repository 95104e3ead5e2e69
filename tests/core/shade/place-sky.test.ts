import { describe, expect, it } from 'vitest'
import { cellCentre } from '#core/geometry'
import { horizonOf, placeSky } from '#core/shade'
import { toDegrees } from '#core/units'
import { readGrid } from '../../truth/read-grid'
import { levelScene, MIDDLE, thing, tiltedScene, wall } from './scenes'
import { volcano } from './volcano'

const { ground, cells } = volcano()
const hill = { ground, standing: [], far: [] }
const some = [...ground.levelM.keys()].filter((cell) => cell % 13 === 0)
const skyOf = (cell: number) => placeSky(hill, cells, cellCentre(ground.frame, cell))!

/** r.horizon reads heights as 32-bit floats and bends the earth [°]. */
const HORIZON_DEG = 0.02

describe('placeSky on a real hill', () => {
  it('GRASS r.horizon: the ground towards the four cardinal points, seen from every thirteenth cell', () => {
    const theirs = ['000', '090', '180', '270'].map(
      (name) => readGrid(`volcano/grass_horizon_${name}_deg.asc`).values,
    )
    const off = some.flatMap((cell) => {
      const { groundDeg } = skyOf(cell)
      return theirs.map((grid, quarter) => Math.abs(groundDeg[quarter * 90]! - Math.max(0, grid[cell]!)))
    })
    expect(off.length).toBe(1636)
    expect(Math.max(...off)).toBeLessThan(HORIZON_DEG)
  })

  it('property: at the middle of a cell the eight winds have the skyline that the whole grid has', () => {
    const winds = [0, 45, 90, 135, 180, 225, 270, 315].map((azimuthDeg) => ({
      azimuthDeg,
      all: horizonOf(ground.frame, ground.levelM, ground.share, azimuthDeg),
    }))
    for (const cell of some) {
      const { groundDeg } = skyOf(cell)
      for (const { azimuthDeg, all } of winds)
        expect(groundDeg[azimuthDeg]).toBeCloseTo(Math.max(0, all[cell]!), 4)
    }
  })

  it('property: between cells the skyline changes little by little', () => {
    const at = cellCentre(ground.frame, 3000)
    let before = placeSky(hill, cells, at)!
    for (let step = 1; step <= 40; step += 1) {
      const next = placeSky(hill, cells, { eastM: at.eastM + step * 0.25, northM: at.northM + step * 0.25 })!
      expect(Math.abs(next.levelM - before.levelM)).toBeLessThan(0.5)
      for (const azimuthDeg of [0, 90, 180, 270])
        expect(Math.abs(next.groundDeg[azimuthDeg]! - before.groundDeg[azimuthDeg]!)).toBeLessThan(6)
      before = next
    }
  })
})

describe('placeSky of planes and things', () => {
  it.each([0, 30, 77, 145, 200, 301])(
    'exact geometry (a plane’s own rise): uphill of a slope of 25° the ground stands as high as the plane, towards %s°',
    (azimuthDeg) => {
      const { shading, cells: tilted } = tiltedScene({ slopeDeg: 25, aspectDeg: 200 })
      const at = { eastM: 10.7, northM: 10.2 }
      const sky = placeSky(shading, tilted, at)!
      const rise = -Math.tan((25 * Math.PI) / 180) * Math.cos(((azimuthDeg - 200) * Math.PI) / 180)
      expect(sky.groundDeg[azimuthDeg]).toBeCloseTo(Math.max(0, toDegrees(Math.atan(rise))), 4)
      expect(sky).toMatchObject({ at, slopeDeg: 25, aspectDeg: 200 })
    },
  )

  it('exact geometry (arctangent of rise over distance): a long wall 8 m to the south, 3 m high', () => {
    const { shading, cells: level } = levelScene([thing('wall', [wall('south', 8, 3)])])
    const { lowDeg, highDeg } = placeSky(shading, level, MIDDLE)!.things[0]!
    for (const azimuthDeg of [95, 120, 150, 180, 222, 260]) {
      const along = Math.cos(((azimuthDeg - 180) * Math.PI) / 180)
      expect(highDeg[azimuthDeg]).toBeCloseTo(toDegrees(Math.atan((3 * along) / 8)), 4)
      expect(lowDeg[azimuthDeg]).toBeCloseTo(-90, 4)
    }
    for (const azimuthDeg of [0, 45, 300, 89]) expect(highDeg[azimuthDeg]).toBeNaN()
  })

  it('exact geometry (tangents to a circle): a round crown of 2 m radius, 10 m to the east and 6 m up', () => {
    const crown = { at: { eastM: 20.5, northM: 10.5 }, radiusM: 2, baseM: 4, topM: 8 }
    const { shading, cells: level } = levelScene([{ ...thing('tree', []), crowns: [crown] }])
    const { lowDeg, highDeg } = placeSky(shading, level, MIDDLE)!.things[0]!
    const middle = Math.atan2(6, 10)
    const half = Math.asin(2 / Math.hypot(10, 6))
    expect(lowDeg[90]).toBeCloseTo(toDegrees(middle - half), 3)
    expect(highDeg[90]).toBeCloseTo(toDegrees(middle + half), 3)
    const widest = toDegrees(Math.asin(2 / 10))
    expect(lowDeg[90 + Math.floor(widest)]).not.toBeNaN()
    expect(lowDeg[90 + Math.ceil(widest)]).toBeNaN()
    expect(lowDeg[90 - 7]).toBeCloseTo(lowDeg[90 + 7]!, 4)
  })

  it('exact geometry (straight lines between points): far hills run on from the last point to the first', () => {
    const far = [
      { azimuthDeg: 90, angleDeg: 10 },
      { azimuthDeg: 180, angleDeg: 4 },
      { azimuthDeg: 350, angleDeg: 6 },
    ]
    const { shading, cells: level } = levelScene([], far)
    const { farDeg } = placeSky(shading, level, MIDDLE)!
    expect(farDeg[90]).toBeCloseTo(10, 5)
    expect(farDeg[135]).toBeCloseTo(7, 5)
    expect(farDeg[0]).toBeCloseTo(6.4, 5)
    expect(farDeg[40]).toBeCloseTo(8, 5)
    const open = levelScene()
    expect(Math.max(...placeSky(open.shading, open.cells, MIDDLE)!.farDeg)).toBe(0)
  })

  it('a place off the plot has no sky', () => {
    const { shading, cells: level } = levelScene()
    expect(placeSky(shading, level, { eastM: -1, northM: 5 })).toBeUndefined()
    shading.ground.share[0] = 0
    expect(placeSky(shading, level, { eastM: 0.5, northM: 20.5 })).toBeUndefined()
    expect(placeSky(shading, level, { eastM: 0.5, northM: 19.5 })).toBeDefined()
  })

  it('property: ground beside the edge of the plot has a level of its own', () => {
    const { shading, cells: tilted } = tiltedScene({ slopeDeg: 10, aspectDeg: 90 })
    for (let column = 12; column < 21; column += 1)
      for (let row = 0; row < 21; row += 1) shading.ground.share[row * 21 + column] = 0
    const place = { eastM: 11.9, northM: 10.5 }
    expect(placeSky(shading, tilted, place)!.levelM).toBe(shading.ground.levelM[10 * 21 + 11])
  })
})
