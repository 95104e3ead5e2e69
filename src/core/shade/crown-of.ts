import { crownMiddle } from './crown-outline'
import type { Crown } from './shade.types'
import type { GroundLevel, Thing } from './standing-thing.types'
import type { ThingFigures } from './thing-figures'

/**
 * Crown of a tree, standing on the ground at its middle.
 *
 * @param thing - the tree
 * @param heightM - its height [m], above 0
 * @param figures - height of its lowest branches and width of its crown [m]
 * @param level - tells the level of the ground
 * @returns the crown; undefined where its width is not known
 * @throws RangeError when the tree has no place, or its lowest branches are not below its top
 */
export function crownOf(
  thing: Thing,
  heightM: number,
  figures: ThingFigures,
  level: GroundLevel,
): Crown | undefined {
  const { crownBaseM, crownWidthM } = figures
  if (crownBaseM === undefined || crownWidthM === undefined) return undefined
  if (!(crownBaseM < heightM))
    throw new RangeError(`crownOf: crownBaseM [m] must be below heightM, ${heightM}, got ${crownBaseM}`)
  const at = crownMiddle(thing.ring)
  const footM = level(at)
  return { at, radiusM: crownWidthM / 2, baseM: footM + crownBaseM, topM: footM + heightM }
}
