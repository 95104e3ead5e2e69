import type { Accuracy } from '#core/accuracy'
import type { Surface } from '#core/survey'
import { hollowsOf, namedPositionOf, type Around, type Terrain } from '#core/terrain'
import type { Plan } from './plan.schema'

/** What the facts around a plot are read from. */
export interface AroundGround {
  readonly surface: Surface
  readonly terrain: Terrain
  readonly accuracy: Accuracy
}

/** Standard errors by which a hollow must be deeper than nothing: two of a difference of two levels [ratio]. */
const SURE_ERRORS = 2 * Math.SQRT2

/** What follows from the ground for a house, a neighbour and the eye. */
export function aroundOf(_plan: Plan, { surface, terrain, accuracy }: AroundGround): Around {
  const leastHollowM = SURE_ERRORS * accuracy.from.levelSdM
  return {
    hollows: hollowsOf(surface, terrain.filledM, leastHollowM),
    leastHollowM,
    leaving: [],
    houses: [],
    views: [],
    namedPosition: namedPositionOf(surface, terrain),
  }
}
