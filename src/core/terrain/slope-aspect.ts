import { toDegrees, wholeCircleDeg } from '#core/units'
import type { Gradients } from './gradients'

/** Ground flatter than this faces nowhere: below any survey, above rounding [m/m]. */
const LEVEL_GRADIENT = 1e-9

/** Aspect of level ground. */
const FACES_NOWHERE = -1

/**
 * Steepness and direction faced of every cell.
 *
 * @param slopes - gradients of every cell [m/m]
 * @returns slope from horizontal [°], 0 to below 90, and direction faced, clockwise from true north [°], -1 where level
 * @see Horn 1981, Proceedings of the IEEE 69: 14-47
 */
export function slopeAspect(slopes: Gradients): { slopeDeg: Float64Array; aspectDeg: Float64Array } {
  const slopeDeg = new Float64Array(slopes.east.length)
  const aspectDeg = new Float64Array(slopes.east.length)
  for (let cell = 0; cell < slopeDeg.length; cell++) {
    const [east, north] = [slopes.east[cell] ?? 0, slopes.north[cell] ?? 0]
    const steepness = Math.sqrt(east * east + north * north)
    slopeDeg[cell] = toDegrees(Math.atan(steepness))
    aspectDeg[cell] =
      steepness < LEVEL_GRADIENT ? FACES_NOWHERE : wholeCircleDeg(toDegrees(Math.atan2(-east, -north)))
  }
  return { slopeDeg, aspectDeg }
}
