import { toDegrees, wholeCircleDeg } from '#core/units'
import type { Direction } from '#core/sun'
import type { FarPoint } from './shade.types'

/**
 * Height of the far skyline in one direction: straight between the points beside it, around the circle. One point stands
 * for the whole circle.
 *
 * @param far - the far skyline, its points in any order; empty for an open horizon
 * @param azimuthDeg - direction looked towards, clockwise from true north [°], finite
 * @returns height above the horizontal [°], 0 with an open horizon
 */
export function farAngleDeg(far: readonly FarPoint[], azimuthDeg: number): number {
  const azimuth = wholeCircleDeg(azimuthDeg)
  const turned = far.map((point) => ({ point, turnDeg: wholeCircleDeg(point.azimuthDeg - azimuth) }))
  const [first] = turned
  if (first === undefined) return 0
  const after = turned.reduce((best, each) => (each.turnDeg < best.turnDeg ? each : best), first)
  const before = turned.reduce((best, each) => (each.turnDeg > best.turnDeg ? each : best), first)
  const backDeg = 360 - before.turnDeg
  const gapDeg = backDeg + after.turnDeg
  if (after.turnDeg === 0 || gapDeg >= 360) return after.point.angleDeg
  const part = backDeg / gapDeg
  return before.point.angleDeg + part * (after.point.angleDeg - before.point.angleDeg)
}

/**
 * Whether the sun stands over the horizon and the far skyline.
 *
 * @param far - the far skyline
 * @param sun - direction of the sun
 * @returns whether its centre is above both
 */
export function overFarSkyline(far: readonly FarPoint[], sun: Direction): boolean {
  if (!(sun.up > 0)) return false
  const azimuthDeg = toDegrees(Math.atan2(sun.east, sun.north))
  return far.length === 0 || toDegrees(Math.asin(Math.min(1, sun.up))) > farAngleDeg(far, azimuthDeg)
}
