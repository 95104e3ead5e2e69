import { stepsAt } from '../../../src/core/sun/sun-steps'
import { daySun, sunAtHourAngle, type Direction, type SunStep } from '#core/sun'
import type { Shading } from '#core/shade'
import { toRadians } from '#core/units'

/** Radius of the earth by which r.sun lets far ground sink [m]. */
const EARTH_RADIUS_M = 6371000
const TURN_RAD_PER_H = Math.PI / 12

/** Middles of the 0.1 h steps at which r.sun's day sums stand the sun, those with the sun up. */
function rsunHours(latitudeDeg: number, dayOfYear: number, stepHours = 0.1): readonly number[] {
  const { declinationRad } = daySun(dayOfYear)
  return Array.from({ length: Math.round(24 / stepHours) }, (_, at) => (at + 0.5) * stepHours).filter(
    (hour) => sunAtHourAngle(toRadians(latitudeDeg), declinationRad, (hour - 12) * TURN_RAD_PER_H).up > 0,
  )
}

/** The steps of a day as r.sun cuts it. */
export function rsunSteps(choice: Parameters<typeof stepsAt>[2] & { stepHours: number }): readonly SunStep[] {
  const hours = rsunHours(choice.latitudeDeg, choice.dayOfYear, choice.stepHours)
  return stepsAt(hours, choice.stepHours, choice)
}

/** Which cells are lit, and for which of those the search ended at a border cell without a slope. */
export interface RsunLit {
  readonly lit: Float32Array
  readonly metBorder: Uint8Array
}

/**
 * r.sun's rule of cast shadows, told in our words: from a cell's centre one cell's length at a time towards the sun; the
 * nearest cell's height is read and the distance taken to that cell's own centre, however far off the line it lies. Where
 * border cells have no slope (`endsAtBorder`), the search ends there and finds light.
 */
export function rsunLit(
  { frame, levelM }: Shading['ground'],
  sun: Direction,
  endsAtBorder: boolean,
): RsunLit {
  const { columns, rows, cellM } = frame
  const level = Math.hypot(sun.east, sun.north)
  const rise = sun.up / level
  const [stepEast, stepNorth] = [sun.east / level, sun.north / level]
  const highest = Math.max(...levelM)
  const onBorder = (row: number, column: number) =>
    row === 0 || column === 0 || row === rows - 1 || column === columns - 1
  const search = (row0: number, column0: number) => {
    const own = levelM[row0 * columns + column0]!
    for (let step = 1; ; step += 1) {
      const column = Math.floor(column0 + step * stepEast + 0.5)
      const row = rows - 1 - Math.floor(rows - 1 - row0 + step * stepNorth + 0.5)
      if (column < 0 || column >= columns || row < 0 || row >= rows) return 'lit'
      if (endsAtBorder && onBorder(row, column)) return 'border'
      const awayM = Math.hypot(column - column0, row - row0) * cellM
      const ray = own + awayM * rise + EARTH_RADIUS_M * (1 - Math.cos(awayM / EARTH_RADIUS_M))
      if (ray < levelM[row * columns + column]!) return 'shaded'
      if (ray > highest) return 'lit'
    }
  }
  const ends = Array.from(levelM, (_, cell) => search(Math.floor(cell / columns), cell % columns))
  return {
    lit: Float32Array.from(ends, (end) => (end === 'shaded' ? 0 : 1)),
    metBorder: Uint8Array.from(ends, (end) => (end === 'border' ? 1 : 0)),
  }
}
