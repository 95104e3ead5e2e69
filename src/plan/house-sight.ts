import { distanceToSegmentM, pointInRing, sides, type PlanPoint, type Ring } from '#core/geometry'
import { outOfSight, type Section, type Stretch } from '#core/terrain'
import type { Plan } from './plan.schema'
import type { Obstacle, Viewpoint } from './plan-survey.schema'

/** Height of the eye of someone standing at a ground-floor door [m]; common practice, no source. */
const EYE_M = 1.6
/** A house further than this to the side of the section does not look along it [m]; own judgement. */
const ASIDE_M = 12
/** A viewpoint this near to a house belongs to it [m]; own judgement. */
const OWN_HOUSE_M = 1

/** What a house above the slope, or a viewpoint there, sees of it. */
export interface HouseSight {
  readonly name: string
  /** True when one looks from the house’s lower wall, for want of a viewpoint of its own. */
  readonly fromWall: boolean
  /** Where the eye is, along the section [m from the top edge], negative above the plot, and its level [m]. */
  readonly eye: { readonly distanceM: number; readonly levelM: number }
  readonly hidden: readonly Stretch[]
}

/**
 * What is seen of the section from each house at the top: from its viewpoints where it has any, else from its lower wall
 * by someone standing there. Ground above the plot is taken to be level with its edge.
 */
export function houseSights(
  section: Section,
  obstacles: readonly Obstacle[],
  viewpoints: readonly Viewpoint[] = [],
): readonly HouseSight[] {
  const given = viewpoints.flatMap((from) => {
    const { alongM, asideM } = placeOn(section, from.at)
    return Math.abs(asideM) <= ASIDE_M
      ? sightFrom(section, { name: from.name, fromWall: false, alongM, eyeM: from.eyeM })
      : []
  })
  const houses = housesAlong(section, obstacles).flatMap(({ house, toM }) =>
    viewpoints.some(({ at }) => isAtHouse(at, house.ring))
      ? []
      : sightFrom(section, { name: house.name, fromWall: true, alongM: toM, eyeM: EYE_M }),
  )
  return [...given, ...houses]
}

function isAtHouse(at: PlanPoint, ring: Ring): boolean {
  return (
    pointInRing(at, ring) || sides(ring).some(([from, to]) => distanceToSegmentM(at, from, to) <= OWN_HOUSE_M)
  )
}

interface SectionEye {
  readonly name: string
  readonly fromWall: boolean
  readonly alongM: number
  readonly eyeM: number
}

// Nothing for an eye in the lower half, which looks up.
function sightFrom(section: Section, { name, fromWall, alongM, eyeM }: SectionEye): HouseSight[] {
  if (alongM > section.lengthM / 2) return []
  const ahead = section.stations.findIndex(({ distanceM }) => distanceM >= alongM)
  const next = section.stations[ahead]
  if (!next) return []
  const before = section.stations[ahead - 1] ?? next
  const spanM = next.distanceM - before.distanceM
  const share = spanM > 0 ? (alongM - before.distanceM) / spanM : 0
  const eye = { distanceM: alongM, levelM: before.levelM + share * (next.levelM - before.levelM) + eyeM }
  return [{ name, fromWall, eye, hidden: outOfSight(section, eye) }]
}

/** Whether the ground falls towards a house: one stands at or beyond the foot, or the person says so. */
export function fallsTowardsHouse({ brief, survey }: Plan, section: Section): boolean {
  const below = housesAlong(section, survey.obstacles).some(({ fromM }) => fromM > section.lengthM / 2)
  return below || brief.fallsTowardsHouse === true
}

interface Along {
  readonly house: Obstacle
  readonly fromM: number
  readonly toM: number
}

function housesAlong(section: Section, obstacles: readonly Obstacle[]): Along[] {
  return obstacles.flatMap((house) => {
    if (house.kind !== 'house') return []
    const corners = house.ring.map((corner) => placeOn(section, corner))
    const alongM = corners.map((corner) => corner.alongM)
    const near = corners.some(({ asideM }) => Math.abs(asideM) <= ASIDE_M)
    return near ? [{ house, fromM: Math.min(...alongM), toM: Math.max(...alongM) }] : []
  })
}

/**
 * Where a place lies beside the section.
 *
 * @param section - the section
 * @param place - any place [m]
 * @returns along it from the top edge, and to its side [m]
 */
export function placeOn(
  { from, to, lengthM }: Section,
  place: PlanPoint,
): { alongM: number; asideM: number } {
  const eastward = (to.eastM - from.eastM) / lengthM
  const northward = (to.northM - from.northM) / lengthM
  const [east, north] = [place.eastM - from.eastM, place.northM - from.northM]
  return { alongM: east * eastward + north * northward, asideM: north * eastward - east * northward }
}
