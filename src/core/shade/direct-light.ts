import type { Month } from '#core/units'
import type { Direction } from '#core/sun'
import { castShade } from './cast-shade'
import { darkness, type StepLight } from './collect-usual-day'
import { overFarSkyline } from './far-skyline'
import { requireShading } from './require-shading'
import type { Shading } from './shade.types'
import { sweptGround } from './swept-ground'
import { thingsShadow } from './things-shadow'

/**
 * Share of direct light that reaches each cell past ground, things and far hills, for one place of the sun. How the cell
 * itself is tilted is not looked at.
 *
 * @param shading - everything that can take the sun away
 * @param sun - direction of the sun
 * @param month - month, for the leaves
 * @param into - where to write the shares, one per cell [1]; a new array when left out
 * @returns `into`: 0 (none) to 1 (all) [1]; 0 outside the plot, and everywhere with the sun below the horizon
 * @throws RangeError when a thing or far hills cannot be
 */
export function directLight(
  shading: Shading,
  sun: Direction,
  month: Month,
  into: Float32Array = new Float32Array(shading.ground.levelM.length),
): Float32Array {
  requireShading(shading)
  const { share } = shading.ground
  into.set(castsDirectLight(shading)(sun, month).direct)
  for (let cell = 0; cell < into.length; cell += 1) if (!(share[cell]! > 0)) into[cell] = 0
  return into
}

/**
 * The same for many places of the sun, with the ground and the things made ready once.
 *
 * @param shading - everything that can take the sun away
 * @returns gives the share of direct light at each cell [1]; cells outside the plot may have any, and 0 may be shared
 */
export function castsDirectLight(shading: Shading): (sun: Direction, month: Month) => StepLight {
  const { ground, standing, far } = shading
  const swept = sweptGround(ground)
  const castThings = thingsShadow(standing, ground)
  const noLight = darkness(ground.levelM.length)
  return (sun, month) => {
    if (!overFarSkyline(far, sun)) return noLight
    const direct = castShade(ground, sun, swept)
    return { direct, ...castThings(sun, month, direct) }
  }
}
