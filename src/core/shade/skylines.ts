import { toDegrees, toRadians, wholeCircleDeg } from '#core/units'
import { skylineTangents } from './horizon-of'
import type { ShadingGround } from './shade.types'
import { sweptGround } from './swept-ground'
import type { Direction } from '#core/sun'

/**
 * Directions in which the skyline is looked for, north first: one for each half hour's turn of the earth, so that the
 * skyline is as fine as the time step. The eight winds are among them.
 */
const DIRECTIONS = 48

/** Directions that are enough for the share of sky: nearer than 0.003 on every cell (docs/methods/shade.md). */
export const SKY_DIRECTIONS = 24

/** The skyline of every cell in every direction, rise over distance; ground below the horizontal counts as 0 [m/m]. */
export type Skylines = readonly Float32Array[]

/**
 * The skyline of every cell, all around.
 *
 * @param ground - the grid; only ground inside the plot counts
 * @param directions - how many directions are looked in [count]
 * @returns for each direction, clockwise from north, one value per cell [m/m]
 */
export function skylinesAround(ground: ShadingGround, directions = DIRECTIONS): Skylines {
  const swept = sweptGround(ground)
  return Array.from({ length: directions }, (_, at) => {
    const skyline = skylineTangents(swept, (360 * at) / directions)
    for (let cell = 0; cell < skyline.length; cell += 1) if (!(skyline[cell]! > 0)) skyline[cell] = 0
    return skyline
  })
}

/**
 * Bearing of one of the directions.
 *
 * @param at - number of the direction [1], 0 for north
 * @param skylines - the skylines it belongs to
 * @returns bearing clockwise from true north [rad]
 */
export function bearingRad(at: number, skylines: Skylines): number {
  return toRadians((360 * at) / skylines.length)
}

/**
 * Which cells direct sun reaches over their skyline, read between the two nearest directions.
 *
 * @param skylines - the skylines
 * @param sun - direction of the sun, above the horizon
 * @param lit - where to write 1 (lit) or 0 (in shadow) for each cell [1]
 * @returns `lit`
 */
export function litOverSkyline(skylines: Skylines, sun: Direction, lit: Float32Array): Float32Array {
  const place = (wholeCircleDeg(toDegrees(Math.atan2(sun.east, sun.north))) * skylines.length) / 360
  const before = Math.floor(place)
  const part = place - before
  const one = skylines[before % skylines.length]!
  const other = skylines[(before + 1) % skylines.length]!
  const rise = sun.up / Math.hypot(sun.east, sun.north)
  for (let cell = 0; cell < lit.length; cell += 1) {
    const here = one[cell]!
    lit[cell] = here + part * (other[cell]! - here) > rise ? 0 : 1
  }
  return lit
}
