import type { Shading } from '#core/shade'
import { toDegrees, toRadians } from '#core/units'

const EARTH_RADIUS_M = 6371000

/** A skyline as r.horizon finds it, and the cells for which it read one off its line. */
export interface RhorizonSkyline {
  readonly angleDeg: Float64Array
  readonly strayed: Uint8Array
}

/**
 * r.horizon's rule, told in our words: one cell's length at a time, the nearest cell's height and the distance to that
 * cell's own centre, the earth curving away. Half a cell beyond the western or southern border rounds back onto the
 * border, so that a line that runs out there reads one more cell, mostly one off the line.
 */
export function rhorizonSkyline({ frame, levelM }: Shading['ground'], azimuthDeg: number): RhorizonSkyline {
  const { columns, rows, cellM } = frame
  const snap = (value: number) => (Math.abs(value) < 1e-7 ? 0 : value)
  const [east, north] = [snap(Math.sin(toRadians(azimuthDeg))), snap(Math.cos(toRadians(azimuthDeg)))]
  const strayed = new Uint8Array(levelM.length)
  const angleDeg = Float64Array.from(levelM, (own, cell) => {
    const [column0, up0] = [cell % columns, rows - 1 - Math.floor(cell / columns)]
    let [x, y, highest] = [column0, up0, -Infinity]
    for (;;) {
      x += east
      y += north
      const [column, up] = [Math.trunc(x + 0.5), Math.trunc(y + 0.5)]
      if (x + 0.5 <= -1 || y + 0.5 <= -1 || column >= columns || up >= rows) break
      const awayM = Math.hypot(column - column0, up - up0) * cellM
      if (awayM === 0) continue
      const rise =
        (levelM[(rows - 1 - up) * columns + column]! - own - (awayM * awayM) / EARTH_RADIUS_M / 2) / awayM
      if (rise > highest) {
        highest = rise
        strayed[cell] = x + 0.5 < 0 || y + 0.5 < 0 ? 1 : 0
      }
    }
    return highest === -Infinity ? -90 : toDegrees(Math.atan(highest))
  })
  return { angleDeg, strayed }
}
