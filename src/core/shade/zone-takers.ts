import type { Month } from '#core/units'
import type { Direction } from '#core/sun'
import { overFarSkyline } from './far-skyline'
import type { Shading } from './shade.types'
import { litOverSkyline, type Skylines } from './skylines'
import { castCrown, castScreen, towardsSun } from './things-cast'
import { groundLevels } from './things-shadow'

/** Nothing stands between a cell and the sun; or its ground does, where no light comes through. */
export const NOBODY = 0
/** Far hills alone. */
export const FAR = 1
/** Two or more at once. */
export const SEVERAL = 2
/** Nobody else, as the cell's own slope faces away; never given here. */
export const OWN_SLOPE = 3
/** The first thing alone; the others follow in order. */
export const FIRST_THING = 4

/** What is between the cells and the sun at one moment. */
export interface InTheWay {
  /** Who stands there, one number per cell. */
  readonly taker: Uint16Array
  /** Share of direct light that comes through, one per cell, 0 to 1. */
  readonly through: Float32Array
}

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
  const levels = groundLevels(ground)
  const found = {
    taker: new Uint16Array(ground.levelM.length),
    through: new Float32Array(ground.levelM.length),
  }
  const taking = takingLight(found)
  return (sun, month) => {
    litOverSkyline(skylines, sun, found.through)
    if (overFarSkyline(far, sun)) found.taker.fill(NOBODY)
    else behindHills(found)
    const sunward = towardsSun(sun)
    standing.forEach((thing, at) => {
      const share = thing.through[month]
      if (share >= 1) return
      const falling = { ground, ...levels, ...sunward, take: taking(FIRST_THING + at, share) }
      for (const screen of thing.screens) castScreen(screen, falling)
      for (const crown of thing.crowns) castCrown(crown, falling)
    })
    return found
  }
}

function behindHills({ taker, through }: InTheWay): void {
  for (let cell = 0; cell < taker.length; cell += 1) taker[cell] = through[cell]! > 0 ? FAR : SEVERAL
  through.fill(0)
}

// Takes light from a cell for one thing after another; parts of one thing that cover each other count once.
function takingLight({ taker, through }: InTheWay): (thing: number, share: number) => (cell: number) => void {
  const stamps = new Int32Array(taker.length)
  let stamp = 0
  const standsThere = (cell: number, thing: number) => {
    if (taker[cell] === thing) return
    taker[cell] = taker[cell] === NOBODY && through[cell]! > 0 ? thing : SEVERAL
  }
  return (thing, share) => {
    if (share === 0)
      return (cell) => {
        standsThere(cell, thing)
        through[cell] = 0
      }
    stamp += 1
    const now = stamp
    return (cell) => {
      if (stamps[cell] === now) return
      stamps[cell] = now
      standsThere(cell, thing)
      through[cell]! *= share
    }
  }
}
