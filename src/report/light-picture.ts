import { squareTo, type Direction } from '#core/sun'
import type { Findings } from '#plan'
import { areasOf } from './plan-shade'
import type { PlanShade } from './plan-shade.types'
import { ramps } from './ramps'

/** Share of direct light from which ground counts as in the sun, and up to which as in shade, 0 to 1; own judgement. */
export const LIGHT_LIMITS = { sun: 0.95, shade: 0.01 } as const

/** Classes of light, from shade to sun, with their colours. */
const classes = [
  { words: 'in shade', colour: ramps.sun[0] },
  { words: 'some light comes through', colour: ramps.sun[4] },
  { words: 'in the sun', colour: ramps.sun[6] },
] as const

/**
 * The plan at one place of the sun: in the sun, through leaves, in shade. Ground that turns its back on the sun has none.
 *
 * @param findings - surface and terrain
 * @param light - share of direct light that reaches each cell past all that stands before the sun, 0 to 1
 * @param sun - direction of the sun
 * @param name - what the picture is of, such as "12 h by the sun"
 */
export function lightPicture(
  { surface, terrain }: Pick<Findings, 'surface' | 'terrain'>,
  light: Float32Array,
  sun: Direction,
  name: string,
): PlanShade {
  const classOfCell = Int8Array.from(surface.share, (share, cell) => {
    if (!(share > 0)) return -1
    const plane = squareTo(terrain.slopeDeg[cell] ?? 0, Math.max(0, terrain.aspectDeg[cell] ?? 0))
    const facing = plane.east * sun.east + plane.north * sun.north + plane.up * sun.up > 0
    return facing && sun.up > 0 ? classOf(light[cell] ?? 0) : 0
  })
  const areas = areasOf(classOfCell, surface)
  return {
    name,
    classOfCell,
    classes: classes.map((each, at) => ({ ...each, planAreaM2: areas[at] ?? 0 })),
  }
}

function classOf(light: number): number {
  if (light >= LIGHT_LIMITS.sun) return 2
  return light > LIGHT_LIMITS.shade ? 1 : 0
}
