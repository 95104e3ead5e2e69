import type { Gradients } from './gradients'

/** Ground flatter than this faces nowhere: below any survey, above rounding [m/m]. */
const LEVEL_GRADIENT = 1e-9

/** Aspect of level ground. */
const FACES_NOWHERE = -1

/** Degrees in a radian [°/rad]. */
const DEGREES = 180 / Math.PI

/** Steepness and direction faced, one value per cell. */
export interface SlopeAspect {
  /** Angle from horizontal [°], 0 to below 90. */
  readonly slopeDeg: Float64Array
  /** Direction faced, clockwise from true north [°]; -1 where level. */
  readonly aspectDeg: Float64Array
}

/**
 * Steepness and direction faced of every cell.
 *
 * @param slopes - gradients of every cell [m/m]
 * @returns slope from horizontal [°], 0 to below 90, and direction faced, clockwise from true north [°], -1 where level
 * @see Horn 1981, Proceedings of the IEEE 69: 14-47
 */
export function slopeAspect(slopes: Gradients): SlopeAspect {
  const { east: eastward, north: northward } = slopes
  const slopeDeg = new Float64Array(eastward.length)
  const aspectDeg = new Float64Array(eastward.length)
  for (let cell = 0; cell < slopeDeg.length; cell++) {
    const east = eastward[cell]!
    const north = northward[cell]!
    const steepness = Math.sqrt(east * east + north * north)
    slopeDeg[cell] = Math.atan(steepness) * DEGREES
    aspectDeg[cell] = steepness < LEVEL_GRADIENT ? FACES_NOWHERE : bearingDeg(-east, -north)
  }
  return { slopeDeg, aspectDeg }
}

// Clockwise from north, 0 to below 360: a tiny negative angle must not round up to 360.
function bearingDeg(east: number, north: number): number {
  const signedDeg = Math.atan2(east, north) * DEGREES
  const turnedDeg = signedDeg < 0 ? signedDeg + 360 : signedDeg
  return turnedDeg < 360 ? turnedDeg : 0
}
