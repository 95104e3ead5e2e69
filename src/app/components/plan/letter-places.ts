import { boxAround, pointInRing, type PlanPoint, type Ring } from '#core/geometry'

/** Places tried across and along a zone [count]. */
const TRIED = 15

/**
 * Places for the letters of zones: in the middle of each, or as near to it as is inside the zone and clear of the letters
 * before.
 *
 * @param rings - outlines of the zones [m]
 * @param apartM - least distance between two letters [m]
 * @returns one place for each; the middle where none is clear
 */
export function letterPlaces(rings: readonly Ring[], apartM: number): readonly PlanPoint[] {
  return rings.reduce<PlanPoint[]>((taken, ring) => [...taken, placeIn(ring, taken, apartM)], [])
}

function placeIn(ring: Ring, taken: readonly PlanPoint[], apartM: number): PlanPoint {
  const box = boxAround(ring)
  const at = (across: number, along: number) => ({
    eastM: box.westM + across * (box.eastM - box.westM),
    northM: box.southM + along * (box.northM - box.southM),
  })
  const middle = at(1 / 2, 1 / 2)
  const steps = Array.from({ length: TRIED }, (_, step) => (step + 1) / (TRIED + 1))
  const tried = steps
    .flatMap((across) => steps.map((along) => at(across, along)))
    .sort((one, other) => awayM(one, middle) - awayM(other, middle))
  const clear = (place: PlanPoint) => taken.every((other) => awayM(place, other) >= apartM)
  return tried.find((place) => pointInRing(place, ring) && clear(place)) ?? middle
}

const awayM = (one: PlanPoint, other: PlanPoint): number =>
  Math.hypot(one.eastM - other.eastM, one.northM - other.northM)
