import { centroid, type PlanPoint, type Ring } from '#core/geometry'
import type { ShadeTables } from './shade-tables.schema'
import type { Crown } from './shade.types'
import type { GroundLevel, Thing } from './standing-thing.types'

/** Corners that an outline has at least [count]. */
const LEAST_CORNERS = 3

/**
 * Crown of a tree: where it was drawn, or the middle and the mean radius of its outline.
 *
 * @param thing - the tree
 * @param heightM - its height [m], above 0
 * @param level - tells the level of the ground
 * @param tables - usual shares of the height, where the crown was not measured
 * @returns the crown
 * @throws RangeError when the tree has no place, or its lowest branches are not below its top
 */
export function crownOf(thing: Thing, heightM: number, level: GroundLevel, tables: ShadeTables): Crown {
  const { baseShare, widthShare } = tables.things.crown
  const { ring, crownWidthM, crownBaseM } = thing
  const at = middleOf(ring)
  const footM = level(at)
  const widthM = crownWidthM ?? outlineWidthM(ring, at) ?? widthShare * heightM
  const baseM = crownBaseM ?? baseShare * heightM
  if (!(baseM < heightM))
    throw new RangeError(`crownOf: crownBaseM [m] must be below heightM, ${heightM}, got ${baseM}`)
  return { at, radiusM: widthM / 2, baseM: footM + baseM, topM: footM + heightM }
}

function middleOf(ring: Ring): PlanPoint {
  const [first] = ring
  if (first === undefined) throw new RangeError('crownOf: a tree must have 1 point or more, got 0')
  return ring.length < LEAST_CORNERS ? first : centroid(ring)
}

function outlineWidthM(ring: Ring, { eastM, northM }: PlanPoint): number | undefined {
  if (ring.length < LEAST_CORNERS) return undefined
  const radii = ring.map((corner) => Math.hypot(corner.eastM - eastM, corner.northM - northM))
  return (2 * radii.reduce((sum, radius) => sum + radius, 0)) / radii.length
}
