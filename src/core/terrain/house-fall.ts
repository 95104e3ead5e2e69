import { pointInRing, sides, signedAreaM2, type PlanPoint, type Ring } from '#core/geometry'
import type { Surface } from '#core/survey'
import type { HouseFall, WallFall } from './around.types'
import { levelOfPlaceM, plotCellAt } from './place-on-ground'
import type { Terrain } from './terrain.types'

/** How far from a wall the fall of the ground counts [m]: the 10 ft of the International Residential Code R401.3, from memory. */
const HOUSE_REACH_M = 3

/** Places along a wall and away from it are looked at this far apart at most [m]. */
const SPACING_M = 0.25

/** Ground seen over less than this much of the way from the wall says nothing [m]; own judgement. */
const LEAST_SPAN_M = 1

/** A house in plan. */
export interface HouseOutline {
  readonly id: string
  readonly name: string
  readonly ring: Ring
}

/**
 * Whether the ground beside each house falls towards it or away, and by how much within reach of its walls.
 *
 * Straight out from places along each wall the level is read every quarter of a metre, as far as the reach, the plot or
 * the next house goes; the fall there is the difference of the farthest and the nearest level over the distance between.
 * Of each wall the worst place is told.
 *
 * @param surface - the ground
 * @param terrain - its facts
 * @param houses - the houses, with three corners or more
 * @param reachM - how far from the walls to look [m], above 1
 * @returns one for each house, in their order
 * @throws RangeError when the reach is not above 1 m
 */
export function houseFalls(
  surface: Surface,
  terrain: Terrain,
  houses: readonly HouseOutline[],
  reachM: number = HOUSE_REACH_M,
): readonly HouseFall[] {
  if (!(reachM > LEAST_SPAN_M && reachM < Infinity))
    throw new RangeError(`houseFalls: reachM must be above ${LEAST_SPAN_M}, got ${reachM}`)
  const ground = { surface, terrain, houses, reachM }
  return houses.map((house) => fallOf(house, wallsOf(house, ground), reachM))
}

interface Beside {
  readonly surface: Surface
  readonly terrain: Terrain
  readonly houses: readonly HouseOutline[]
  readonly reachM: number
}

function fallOf({ id, name }: HouseOutline, walls: readonly WallFall[], reachM: number): HouseFall {
  const worst = walls.reduce<WallFall | undefined>(
    (most, wall) => (wall.gradient > (most?.gradient ?? 0) ? wall : most),
    undefined,
  )
  return {
    obstacleId: id,
    name,
    towardsGradient: worst?.gradient ?? 0,
    towardsM: worst?.aboveM ?? 0,
    awayGradient: Math.max(0, ...walls.map(({ gradient }) => -gradient)),
    at: worst?.at,
    reachM,
    walls,
  }
}

function wallsOf({ ring }: HouseOutline, ground: Beside): WallFall[] {
  const turn = signedAreaM2(ring) < 0 ? -1 : 1
  return sides(ring).flatMap(([from, to]) => {
    const lengthM = Math.hypot(to.eastM - from.eastM, to.northM - from.northM)
    if (lengthM === 0) return []
    const out = {
      eastM: (turn * (to.northM - from.northM)) / lengthM,
      northM: (-turn * (to.eastM - from.eastM)) / lengthM,
    }
    const places = Math.max(1, Math.round(lengthM / SPACING_M))
    const falls = Array.from({ length: places }, (_, place) => {
      const share = (place + 0.5) / places
      return fallAt(
        {
          eastM: from.eastM + share * (to.eastM - from.eastM),
          northM: from.northM + share * (to.northM - from.northM),
        },
        out,
        ground,
      )
    }).filter((fall) => fall !== undefined)
    const [first, ...others] = falls
    if (!first) return []
    const worst = others.reduce((most, fall) => (fall.gradient > most.gradient ? fall : most), first)
    return [{ from, to, ...worst }]
  })
}

// The fall towards a place on a wall, from the levels straight out from it.
function fallAt(
  at: PlanPoint,
  out: PlanPoint,
  ground: Beside,
): Pick<WallFall, 'gradient' | 'aboveM' | 'at'> | undefined {
  const seen = levelsOut(at, out, ground)
  const [nearest, farthest] = [seen[0], seen.at(-1)]
  if (!nearest || !farthest) return undefined
  const spanM = farthest.awayM - nearest.awayM
  if (spanM < LEAST_SPAN_M) return undefined
  const highestM = Math.max(...seen.map(({ levelM }) => levelM))
  return {
    gradient: (farthest.levelM - nearest.levelM) / spanM,
    aboveM: highestM - nearest.levelM,
    at,
  }
}

function levelsOut(at: PlanPoint, out: PlanPoint, { surface, terrain, houses, reachM }: Beside) {
  const seen: { awayM: number; levelM: number }[] = []
  const steps = Math.ceil(reachM / SPACING_M)
  for (let step = 0; step <= steps; step++) {
    const awayM = (step / steps) * reachM
    const place = { eastM: at.eastM + awayM * out.eastM, northM: at.northM + awayM * out.northM }
    if (step > 0 && houses.some(({ ring }) => pointInRing(place, ring))) break
    if (plotCellAt(surface, place) === undefined) {
      if (seen.length > 0) break
    } else seen.push({ awayM, levelM: levelOfPlaceM(surface, terrain, place) })
  }
  return seen
}
