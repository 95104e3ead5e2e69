import { toDegrees, wholeCircleDeg } from '#core/units'
import { sweepGround, type SweptLine } from './sweep-ground'
import { sweptGround, type SweptGround } from './swept-ground'
import type { ShadingGround } from './shade.types'
import type { Direction } from '#core/sun'

/** A shadow must rise this much above the ground to count [m]; it absorbs rounding on even slopes. */
const SHADOW_SLACK_M = 1e-3

/**
 * Where direct sun reaches the ground past other ground: where the shadow's upper edge lies below the cell's own level.
 *
 * @param ground - the grid; only ground inside the plot throws shadows
 * @param sun - direction of the sun, above the horizon
 * @param swept - the same ground made ready, where several suns shine on it
 * @returns 1 for each cell that is lit and 0 for each in shadow [1]
 */
export function castShade(
  ground: ShadingGround,
  sun: Direction,
  swept: SweptGround = sweptGround(ground),
): Float32Array {
  const azimuthDeg = wholeCircleDeg(toDegrees(Math.atan2(sun.east, sun.north)))
  const sunRise = sun.up / Math.hypot(sun.east, sun.north)
  const edgeM = sweepGround(swept, azimuthDeg, (line) => edgeAlong(line, sunRise), {
    nothing: -Infinity,
    areLevels: true,
  })
  const { levelM } = ground
  for (let cell = 0; cell < edgeM.length; cell += 1)
    edgeM[cell] = edgeM[cell]! > levelM[cell]! + SHADOW_SLACK_M ? 0 : 1
  return edgeM
}

// Lets the shadow's edge fall along the line by the sun's height and raises it again to every higher ground.
function edgeAlong({ levelM, found, from, to, stepM }: SweptLine, sunRise: number): void {
  const fallM = sunRise * stepM
  let shadowM = -Infinity
  for (let place = from; place < to; place += 1) {
    shadowM -= fallM
    const level = levelM[place]!
    if (Number.isNaN(level)) continue
    found[place] = shadowM
    if (level > shadowM) shadowM = level
  }
}
