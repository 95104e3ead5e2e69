import { outOfSight, type Section, type Stretch } from '#core/terrain'
import type { Plan } from './plan.schema'
import type { Obstacle } from './plan-survey.schema'

/** Height of the eye of someone standing at a ground-floor door [m]; common practice, no source. */
const EYE_M = 1.6
/** A house further than this to the side of the section does not look along it [m]; own judgement. */
const ASIDE_M = 12

/** What a house above the slope sees of it. */
export interface HouseSight {
  readonly name: string
  /** Where the eye is, along the section [m from the top edge], negative above the plot, and its level [m]. */
  readonly eye: { readonly distanceM: number; readonly levelM: number }
  readonly hidden: readonly Stretch[]
}

/** What each house at the top sees, from its lower wall; ground above the plot is taken to be level with its edge. */
export function houseSights(section: Section, obstacles: readonly Obstacle[]): readonly HouseSight[] {
  return housesAlong(section, obstacles).flatMap(({ house, toM }) => {
    if (toM > section.lengthM / 2) return []
    const station = section.stations.find(({ distanceM }) => distanceM >= toM)
    if (!station) return []
    const eye = { distanceM: toM, levelM: station.levelM + EYE_M }
    return [{ name: house.name, eye, hidden: outOfSight(section, eye) }]
  })
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

function housesAlong({ from, to, lengthM }: Section, obstacles: readonly Obstacle[]): Along[] {
  const eastward = (to.eastM - from.eastM) / lengthM
  const northward = (to.northM - from.northM) / lengthM
  return obstacles.flatMap((house) => {
    if (house.kind !== 'house') return []
    const corners = house.ring.map(({ eastM, northM }) => {
      const east = eastM - from.eastM
      const north = northM - from.northM
      return { alongM: east * eastward + north * northward, asideM: north * eastward - east * northward }
    })
    const alongM = corners.map((corner) => corner.alongM)
    const near = corners.some(({ asideM }) => Math.abs(asideM) <= ASIDE_M)
    return near ? [{ house, fromM: Math.min(...alongM), toM: Math.max(...alongM) }] : []
  })
}
