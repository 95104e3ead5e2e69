import type { Direction } from '#core/sun'
import type { Shading } from '#core/shade'
import { toDegrees, toRadians } from '#core/units'

/** Length of a ray's steps [m]: a tenth of a cell of the test hill. */
const STEP_M = 1

/** What a ray finds: level of the surface and how far it has come [m]. Returning true ends it. */
type AtStep = (surfaceM: number, awayM: number) => boolean

/**
 * Follows rays by brute force over the surface that is straight between neighbouring cell centres (bilinear). The first
 * cell's length is left to the cell's own slope.
 */
function rays({ frame, levelM }: Shading['ground'], towards: { east: number; north: number }) {
  const { columns, rows, cellM } = frame
  const [east, south] = [(towards.east / cellM) * STEP_M, (-towards.north / cellM) * STEP_M]
  const first = Math.ceil(1 / Math.max(Math.abs(east), Math.abs(south)) - 1e-9)
  const surface = (column: number, row: number) => {
    const [west, north] = [Math.min(columns - 2, Math.floor(column)), Math.min(rows - 2, Math.floor(row))]
    const [across, down] = [column - west, row - north]
    const at = north * columns + west
    const upper = levelM[at]! + across * (levelM[at + 1]! - levelM[at]!)
    const lower = levelM[at + columns]! + across * (levelM[at + columns + 1]! - levelM[at + columns]!)
    return upper + down * (lower - upper)
  }
  return (cell: number, visit: AtStep) => {
    for (let step = first; ; step += 1) {
      const column = (cell % columns) + step * east
      const row = Math.floor(cell / columns) + step * south
      if (column < 0 || row < 0 || column > columns - 1 || row > rows - 1) return
      if (visit(surface(column, row), step * STEP_M)) return
    }
  }
}

/** Cast shadows: 1 for each cell whose ray to the sun is free, else 0. */
export function exactLit(ground: Shading['ground'], sun: Direction): Float32Array {
  const level = Math.hypot(sun.east, sun.north)
  const rise = sun.up / level
  const follow = rays(ground, { east: sun.east / level, north: sun.north / level })
  const highest = Math.max(...ground.levelM)
  return Float32Array.from(ground.levelM, (own, cell) => {
    let lit = 1
    follow(cell, (surfaceM, awayM) => {
      const ray = own + awayM * rise
      if (surfaceM > ray + 1e-6) lit = 0
      return lit === 0 || ray > highest
    })
    return lit
  })
}

/** Height of the skyline in one direction [°]; -90 with no ground that way. */
export function exactSkylineDeg(ground: Shading['ground'], azimuthDeg: number): Float64Array {
  const azimuth = toRadians(azimuthDeg)
  const follow = rays(ground, { east: Math.sin(azimuth), north: Math.cos(azimuth) })
  return Float64Array.from(ground.levelM, (own, cell) => {
    let highest = -Infinity
    follow(cell, (surfaceM, awayM) => {
      highest = Math.max(highest, (surfaceM - own) / awayM)
      return false
    })
    return toDegrees(Math.atan(highest))
  })
}
