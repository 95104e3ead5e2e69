import { sides, type PlanPoint, type Ring } from '#core/geometry'
import { ridgeLine } from './ridge-line'
import type { Screen } from './shade.types'
import type { GroundLevel, Thing } from './standing-thing.types'

/** Corners that an outline has at least [count]. */
const LEAST_CORNERS = 3

/**
 * Screens of a building: its walls, level on top, and with a ridge a gable roof: one screen along the ridge and two at
 * each gable, rising from the eaves to the end of the ridge. Light that meets the roof anywhere meets one of these.
 *
 * @param thing - the building, standing on the mean level at its corners
 * @param thing.ring - its outline [m]
 * @param thing.ridgeM - height of its ridge [m]; a flat roof when left out
 * @param eavesM - height of its walls [m]
 * @param level - tells the level of the ground
 * @returns the screens; none for a single point
 */
export function buildingScreens(
  { ring, ridgeM }: Thing,
  eavesM: number,
  level: GroundLevel,
): readonly Screen[] {
  if (ring.length < 2) return []
  const footM = ring.reduce((sum, corner) => sum + level(corner), 0) / ring.length
  const eavesLevelM = footM + eavesM
  const walls = sides(ring).map(([from, to]) => screen(from, eavesLevelM, to, eavesLevelM))
  return ridgeM === undefined || ridgeM <= eavesM || ring.length < LEAST_CORNERS
    ? walls
    : [...walls, ...roofScreens(ring, eavesLevelM, footM + ridgeM)]
}

function roofScreens(ring: Ring, eavesLevelM: number, ridgeLevelM: number): readonly Screen[] {
  const ridge = ridgeLine(ring)
  if (ridge === undefined) return []
  const [one, other] = ridge
  const gables = [one, other].flatMap(({ at, wall: [from, to] }) => [
    screen(from, eavesLevelM, at, ridgeLevelM),
    screen(at, ridgeLevelM, to, eavesLevelM),
  ])
  return [screen(one.at, ridgeLevelM, other.at, ridgeLevelM), ...gables]
}

function screen(from: PlanPoint, topFromM: number, to: PlanPoint, topToM: number): Screen {
  return { from, to, topFromM, topToM }
}
