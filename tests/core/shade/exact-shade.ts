import type { Direction } from '#core/sun'
import type { Shading } from '#core/shade'

/** Length of a ray's steps [m]: a tenth of a cell of the test hill. */
const STEP_M = 1

/**
 * Cast shadows by brute force: from each cell's centre a ray is followed towards the sun over the surface that is straight
 * between neighbouring cell centres (bilinear). The first cell's length is left to the cell's own slope.
 */
export function exactLit({ frame, levelM }: Shading['ground'], sun: Direction): Float32Array {
  const { columns, rows, cellM } = frame
  const level = Math.hypot(sun.east, sun.north)
  const riseM = (sun.up / level) * STEP_M
  const [east, south] = [(sun.east / level / cellM) * STEP_M, (-sun.north / level / cellM) * STEP_M]
  const first = Math.ceil(1 / Math.max(Math.abs(east), Math.abs(south)) - 1e-9)
  const highest = Math.max(...levelM)
  const surface = (column: number, row: number) => {
    const [west, north] = [Math.min(columns - 2, Math.floor(column)), Math.min(rows - 2, Math.floor(row))]
    const [across, down] = [column - west, row - north]
    const at = north * columns + west
    const upper = levelM[at]! + across * (levelM[at + 1]! - levelM[at]!)
    const lower = levelM[at + columns]! + across * (levelM[at + columns + 1]! - levelM[at + columns]!)
    return upper + down * (lower - upper)
  }
  const litFrom = (own: number, column0: number, row0: number) => {
    for (let step = first; ; step += 1) {
      const [column, row] = [column0 + step * east, row0 + step * south]
      const ray = own + step * riseM
      if (column < 0 || row < 0 || column > columns - 1 || row > rows - 1 || ray > highest) return 1
      if (surface(column, row) > ray + 1e-6) return 0
    }
  }
  return Float32Array.from(levelM, (own, cell) => litFrom(own, cell % columns, Math.floor(cell / columns)))
}
