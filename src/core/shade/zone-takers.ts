import type { Month } from '#core/units'
import type { Direction } from '#core/sun'
import { overFarSkyline } from './far-skyline'
import type { Shading } from './shade.types'
import { litOverSkyline, type Skylines } from './skylines'
import { castCrown, castScreen } from './things-cast'

/** Who stands between a cell and the sun: one of these, or `FIRST_THING` and the thing's place in the list. */
export const NOBODY = 0
export const GROUND = 1
export const FAR = 2
export const SEVERAL = 3
export const FIRST_THING = 4

/** What is between the cells and the sun at one moment. */
export interface InTheWay {
  /** Who stands there, one number per cell. */
  readonly taker: Uint16Array
  /** Share of direct light that comes through, one per cell, 0 to 1. */
  readonly through: Float32Array
}

/** Least plan part of the sun's direction [1]: nearer to the zenith it is taken to stand just beside it. */
const LEAST_LEVEL = 1e-6

/**
 * Tells who stands between the cells and the sun, as `sunOnGround` reckons it: ground by its skyline, far hills, and each
 * thing that does not let all through. The cell's own tilt is not looked at.
 *
 * @param shading - everything that can take the sun away
 * @param skylines - skylines of the ground
 * @returns looks towards the sun, above the horizon, in a month; what it gives is overwritten by the next look
 */
export function takersOf(shading: Shading, skylines: Skylines): (sun: Direction, month: Month) => InTheWay {
  const { ground, standing, far } = shading
  const cells = ground.levelM.length
  const levels = levelsOf(shading)
  const taker = new Uint16Array(cells)
  const through = new Float32Array(cells)
  const stamps = new Int32Array(cells)
  let stamp = 0
  const taking = (thing: number, share: number) => {
    stamp += 1
    return (cell: number) => {
      if (stamps[cell] === stamp) return
      stamps[cell] = stamp
      taker[cell] = taker[cell] === NOBODY ? thing : SEVERAL
      through[cell]! *= share
    }
  }
  return (sun, month) => {
    litOverSkyline(skylines, sun, through)
    passedBy(overFarSkyline(far, sun), through, taker)
    const level = Math.hypot(sun.east, sun.north)
    const look = level > 0 ? { east: sun.east / level, north: sun.north / level } : { east: 0, north: 1 }
    const rise = sun.up / Math.max(level, LEAST_LEVEL)
    standing.forEach((thing, at) => {
      const share = thing.through[month]
      if (share >= 1) return
      const falling = { ground, ...levels, look, rise, take: taking(FIRST_THING + at, share) }
      for (const screen of thing.screens) castScreen(screen, falling)
      for (const crown of thing.crowns) castCrown(crown, falling)
    })
    return { taker, through }
  }
}

// What ground and far hills leave, and who of them stands there.
function passedBy(overFar: boolean, through: Float32Array, taker: Uint16Array): void {
  if (overFar) {
    for (let cell = 0; cell < taker.length; cell += 1) taker[cell] = through[cell]! > 0 ? NOBODY : GROUND
    return
  }
  for (let cell = 0; cell < taker.length; cell += 1) taker[cell] = through[cell]! > 0 ? FAR : SEVERAL
  through.fill(0)
}

// Lowest and highest ground of the plot [m].
function levelsOf({ ground: { levelM, share } }: Shading) {
  let [lowestM, highestM] = [Infinity, -Infinity]
  for (let cell = 0; cell < levelM.length; cell += 1) {
    if (!(share[cell]! > 0)) continue
    lowestM = Math.min(lowestM, levelM[cell]!)
    highestM = Math.max(highestM, levelM[cell]!)
  }
  return { lowestM, highestM }
}
