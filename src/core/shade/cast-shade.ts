import { toDegrees, wholeCircleDeg } from '#core/units'
import { sweepGround, type SweptLine } from './sweep-ground'
import type { ShadingGround } from './shade.types'
import type { Direction } from '#core/sun'

/** A shadow must rise this much above the ground to count [m]; it absorbs rounding on even slopes. */
const SHADOW_SLACK_M = 1e-9

/**
 * Where direct sun reaches the ground past other ground.
 *
 * @param ground - the grid; only ground inside the plot throws shadows
 * @param sun - direction of the sun, above the horizon
 * @returns part of each cell that is lit [1], 0 (in shadow) to 1; parts arise where a shadow's edge crosses a cell
 */
export function castShade(ground: ShadingGround, sun: Direction): Float32Array {
  const azimuthDeg = wholeCircleDeg(toDegrees(Math.atan2(sun.east, sun.north)))
  const sunRise = sun.up / Math.hypot(sun.east, sun.north)
  return sweepGround(ground, azimuthDeg, (line) => shadeAlong(line, sunRise), 1)
}

// Lets the shadow fall along the line by the sun's height and raises it again to every higher ground.
function shadeAlong(line: SweptLine, sunRise: number): void {
  const fallM = Number.isFinite(sunRise) ? sunRise * line.stepM : 0
  let shadowM = -Infinity
  let last = 0
  for (let sample = 0; sample < line.count; sample += 1) {
    const place = line.at[sample]!
    const level = line.levelM[sample]!
    shadowM -= fallM * (place - last)
    last = place
    line.found[sample] = shadowM > level + SHADOW_SLACK_M ? 0 : 1
    if (level > shadowM) shadowM = level
  }
}
