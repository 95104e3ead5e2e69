import { toDegrees, wholeCircleDeg } from '#core/units'
import { sweepGround, type SweptLine } from './sweep-ground'
import { sweptGround, type SweptGround } from './swept-ground'
import type { ShadingGround } from './shade.types'
import type { Direction } from '#core/sun'

/** A shadow must rise this much above the ground to count [m]; it absorbs rounding on even slopes. */
const SHADOW_SLACK_M = 1e-9

/**
 * Where direct sun reaches the ground past other ground.
 *
 * @param ground - the grid; only ground inside the plot throws shadows
 * @param sun - direction of the sun, above the horizon
 * @param swept - the same ground made ready, where several suns shine on it
 * @returns part of each cell that is lit [1], 0 (in shadow) to 1; parts arise where a shadow's edge crosses a cell
 */
export function castShade(
  ground: ShadingGround,
  sun: Direction,
  swept: SweptGround = sweptGround(ground),
): Float32Array {
  const azimuthDeg = wholeCircleDeg(toDegrees(Math.atan2(sun.east, sun.north)))
  const sunRise = sun.up / Math.hypot(sun.east, sun.north)
  return sweepGround(swept, azimuthDeg, (line) => shadeAlong(line, sunRise), 1)
}

// Lets the shadow fall along the line by the sun's height and raises it again to every higher ground.
function shadeAlong({ levelM, found, from, to, stepM }: SweptLine, sunRise: number): void {
  const fallM = sunRise * stepM
  let shadowM = -Infinity
  for (let place = from; place < to; place += 1) {
    shadowM -= fallM
    const level = levelM[place]!
    if (Number.isNaN(level)) continue
    found[place] = shadowM > level + SHADOW_SLACK_M ? 0 : 1
    if (level > shadowM) shadowM = level
  }
}
