import type { Accuracy } from '#core/accuracy'
import type { Surface } from '#core/survey'
import {
  hollowsOf,
  houseFalls,
  leavingOf,
  namedPositionOf,
  seenFrom,
  type Around,
  type SightBlock,
  type Terrain,
} from '#core/terrain'
import type { Plan } from './plan.schema'
import type { Obstacle } from './plan-survey.schema'
import type { StageMemory } from './stages'

/** What the facts around a plot are read from. */
export interface AroundGround {
  readonly surface: Surface
  readonly terrain: Terrain
  readonly accuracy: Accuracy
}

/** Standard errors of a level by which a hollow must be deeper than nothing: two of a difference of two levels [ratio]. */
const SURE_ERRORS = 2 * Math.SQRT2

/** Corners that an outline has at least [count]. */
const LEAST_CORNERS = 3

/** What follows from the ground for a house, a neighbour and the eye; made anew when any of these changed. */
export function aroundStage(plan: Plan, ground: AroundGround, memory: StageMemory): Around {
  const { surface, terrain, accuracy } = ground
  const { obstacles, beyond, viewpoints } = plan.survey
  const inputs = [surface, terrain, accuracy, obstacles, beyond, viewpoints]
  return memory.run('around', inputs, () => aroundOf(plan, ground))
}

function aroundOf({ survey }: Plan, { surface, terrain, accuracy }: AroundGround): Around {
  const leastHollowM = SURE_ERRORS * accuracy.from.levelSdM
  const blocks = sightBlocks({ survey })
  return {
    hollows: hollowsOf(surface, terrain.filledM, leastHollowM),
    leastHollowM,
    leaving: leavingOf(surface, terrain, survey.beyond ?? []),
    houses: houseFalls(surface, terrain, survey.obstacles.filter(isHouseOutline)),
    views: (survey.viewpoints ?? []).map((from) => seenFrom(surface, terrain, from, blocks)),
    namedPosition: namedPositionOf(surface, terrain),
  }
}

/** What stands on a plan that one cannot look through. */
export function sightBlocks({ survey }: Pick<Plan, 'survey'>): readonly SightBlock[] {
  return survey.obstacles.flatMap(sightBlock)
}

const isHouseOutline = ({ kind, ring }: Obstacle): boolean => kind === 'house' && ring.length >= LEAST_CORNERS

/** Kinds of things that one cannot look through. */
const opaque: readonly Obstacle['kind'][] = ['house', 'building', 'wall', 'fence', 'hedge']

function sightBlock({ kind, name, ring, heightM }: Obstacle): SightBlock[] {
  return opaque.includes(kind)
    ? [{ name, isHouse: kind === 'house' || kind === 'building', ring, heightM }]
    : []
}
