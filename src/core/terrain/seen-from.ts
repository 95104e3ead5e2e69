import { cellCentre, distanceToSegmentM, pointInRing, sides, type PlanPoint, type Ring } from '#core/geometry'
import type { Surface } from '#core/survey'
import type { SeenFrom } from './around.types'
import { levelOfPlaceM, plotCellAt } from './place-on-ground'
import { highestOnSightLine, type Sight } from './seen-from-line'
import type { Terrain } from './terrain.types'

/** Where one looks from. */
export interface EyePlace {
  readonly id: string
  readonly name: string
  readonly at: PlanPoint
  /** Height of the eye above the ground there [m]. */
  readonly eyeM: number
}

/** Something that one cannot look through. */
export interface SightBlock {
  readonly name: string
  /** A house is closed and level on top; a wall, fence or hedge is a line whose top follows the ground. */
  readonly isHouse: boolean
  readonly ring: Ring
  /** Height above the ground [m]; undefined when not known, then it hides nothing. */
  readonly heightM: number | undefined
}

/** A house this near is the one looked out of [m]; own judgement. */
const OWN_HOUSE_M = 1

/** A line of sight may pass this close over ground and tops and still be clear [m]: rounding. */
const GRAZING_M = 1e-9

/**
 * Which cells of the plot can be seen from a place: those whose middle is joined to the eye by a straight line that
 * passes over all the ground, read between cell centres, and over all that stands between.
 *
 * The house one looks out of hides nothing but the ground under it. Where the eye is off the plot, the ground under it
 * is taken to be level with the nearest cell. Ground off the plot hides nothing.
 *
 * @param surface - the ground
 * @param terrain - its facts
 * @param from - where one looks from; its eye height [m] is 0 or more
 * @param blocks - what stands in the way
 * @returns what is seen
 * @throws RangeError when the eye is below the ground
 */
export function seenFrom(
  surface: Surface,
  terrain: Terrain,
  from: EyePlace,
  blocks: readonly SightBlock[],
): SeenFrom {
  if (!(from.eyeM >= 0)) throw new RangeError(`seenFrom: eyeM must be 0 or more, got ${from.eyeM}`)
  const eyeLevelM = groundUnderM(surface, terrain, from.at) + from.eyeM
  const screens = screensOf(surface, terrain, blocks, from.at)
  const houses = blocks.filter(({ isHouse }) => isHouse)
  const seen = new Uint8Array(surface.share.length)
  let [seenCells, cells] = [0, 0]
  for (let cell = 0; cell < seen.length; cell++) {
    const share = surface.share[cell]!
    if (!(share > 0)) continue
    cells += share
    const sight = {
      eye: from.at,
      eyeLevelM,
      to: cellCentre(surface.frame, cell),
      toLevelM: surface.levelM[cell]!,
    }
    const clear =
      highestOnSightLine(surface, sight, cell) <= GRAZING_M &&
      !screens.some((screen) => hides(screen, sight)) &&
      !houses.some(({ ring }) => pointInRing(sight.to, ring))
    if (!clear) continue
    seen[cell] = 1
    seenCells += share
  }
  const withoutHeight = blocks.flatMap(({ name, heightM }) => (heightM === undefined ? [name] : []))
  return {
    viewpointId: from.id,
    name: from.name,
    seen,
    seenShare: seenCells / cells,
    eyeLevelM,
    withoutHeight,
  }
}

function groundUnderM(surface: Surface, terrain: Terrain, at: PlanPoint): number {
  if (plotCellAt(surface, at) !== undefined) return levelOfPlaceM(surface, terrain, at)
  let [nearestM, levelM] = [Infinity, 0]
  for (let cell = 0; cell < surface.share.length; cell++) {
    if (!(surface.share[cell]! > 0)) continue
    const centre = cellCentre(surface.frame, cell)
    const awayM = Math.hypot(centre.eastM - at.eastM, centre.northM - at.northM)
    if (awayM < nearestM) [nearestM, levelM] = [awayM, surface.levelM[cell]!]
  }
  return levelM
}

/** Upright faces of one thing, and how high they stand. */
interface Screen {
  readonly faces: readonly (readonly [PlanPoint, PlanPoint])[]
  readonly topM: (at: PlanPoint) => number
}

function screensOf(
  surface: Surface,
  terrain: Terrain,
  blocks: readonly SightBlock[],
  eye: PlanPoint,
): readonly Screen[] {
  return blocks.flatMap(({ isHouse, ring, heightM }): Screen[] => {
    if (heightM === undefined || heightM === 0 || (isHouse && isOwnHouse(ring, eye))) return []
    const all = sides(ring)
    const groundM = (at: PlanPoint) => groundUnderM(surface, terrain, at)
    if (!isHouse) return [{ faces: all.slice(0, -1), topM: (at) => groundM(at) + heightM }]
    const roofM = heightM + ring.reduce((sum, corner) => sum + groundM(corner), 0) / ring.length
    return [{ faces: all, topM: () => roofM }]
  })
}

const isOwnHouse = (ring: Ring, eye: PlanPoint): boolean =>
  pointInRing(eye, ring) || sides(ring).some(([from, to]) => distanceToSegmentM(eye, from, to) <= OWN_HOUSE_M)

function hides({ faces, topM }: Screen, sight: Sight): boolean {
  return faces.some(([from, to]) => {
    const share = shareOfCrossing(sight, from, to)
    if (share === undefined) return false
    const at = {
      eastM: sight.eye.eastM + share * (sight.to.eastM - sight.eye.eastM),
      northM: sight.eye.northM + share * (sight.to.northM - sight.eye.northM),
    }
    const passesM = sight.eyeLevelM + share * (sight.toLevelM - sight.eyeLevelM)
    return passesM < topM(at) - GRAZING_M
  })
}

// Share of the sight before it crosses an upright face; undefined when it does not.
function shareOfCrossing({ eye, to }: Sight, start: PlanPoint, end: PlanPoint): number | undefined {
  const [east, north] = [to.eastM - eye.eastM, to.northM - eye.northM]
  const [faceEast, faceNorth] = [end.eastM - start.eastM, end.northM - start.northM]
  const turn = east * faceNorth - north * faceEast
  if (turn === 0) return undefined
  const [aside, ahead] = [start.eastM - eye.eastM, start.northM - eye.northM]
  const share = (aside * faceNorth - ahead * faceEast) / turn
  const along = (aside * north - ahead * east) / turn
  return share > 0 && share < 1 && along >= 0 && along <= 1 ? share : undefined
}
