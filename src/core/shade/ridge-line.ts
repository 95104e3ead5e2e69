import { convexHull, sides, type PlanPoint, type Ring } from '#core/geometry'

/** One end of a ridge, over the wall that carries it. */
export interface RidgeEnd {
  readonly at: PlanPoint
  readonly wall: readonly [PlanPoint, PlanPoint]
}

/**
 * Where a gable roof's ridge runs: along the longer side of the smallest rectangle around the outline, through its middle,
 * from the first wall it meets to the last.
 *
 * @param ring - outline of the building [m]
 * @returns its two ends; undefined when all corners lie in one line
 */
export function ridgeLine(ring: Ring): readonly [RidgeEnd, RidgeEnd] | undefined {
  const box = smallestBox(ring)
  if (box === undefined) return undefined
  const { east, north, middle } = box
  const crossings = sides(ring).flatMap((wall): (RidgeEnd & { readonly along: number })[] => {
    const [from, to] = [inBox(wall[0], box), inBox(wall[1], box)]
    if (from.aside < middle === to.aside < middle) return []
    const along = from.along + ((middle - from.aside) / (to.aside - from.aside)) * (to.along - from.along)
    return [
      { along, wall, at: { eastM: along * east - middle * north, northM: along * north + middle * east } },
    ]
  })
  const inOrder = crossings.sort((one, other) => one.along - other.along)
  const [first, last] = [inOrder[0], inOrder[inOrder.length - 1]]
  return first && last && first !== last ? [first, last] : undefined
}

/** A box by the direction of its longer side, and how far its middle lies to the left of the origin. */
interface Box {
  readonly east: number
  readonly north: number
  readonly middle: number
}

const inBox = ({ eastM, northM }: PlanPoint, { east, north }: Pick<Box, 'east' | 'north'>) => ({
  along: eastM * east + northM * north,
  aside: northM * east - eastM * north,
})

// One of its sides lies along a side of the hull.
function smallestBox(ring: Ring): Box | undefined {
  const hull = convexHull(ring)
  if (hull.length < 3) return undefined
  let [least, found]: [number, Box | undefined] = [Infinity, undefined]
  for (const [from, to] of sides(hull)) {
    const lengthM = Math.hypot(to.eastM - from.eastM, to.northM - from.northM)
    const along = { east: (to.eastM - from.eastM) / lengthM, north: (to.northM - from.northM) / lengthM }
    const one = spanOf(hull, along)
    if (!(one.lengthM * one.widthM < least)) continue
    least = one.lengthM * one.widthM
    found =
      one.lengthM >= one.widthM
        ? { ...along, middle: one.middleAside }
        : { east: -along.north, north: along.east, middle: -one.middleAlong }
  }
  return found
}

function spanOf(hull: Ring, direction: Pick<Box, 'east' | 'north'>) {
  const places = hull.map((corner) => inBox(corner, direction))
  const along = places.map((place) => place.along)
  const aside = places.map((place) => place.aside)
  const [near, far] = [Math.min(...along), Math.max(...along)]
  const [right, left] = [Math.min(...aside), Math.max(...aside)]
  return {
    lengthM: far - near,
    widthM: left - right,
    middleAlong: (near + far) / 2,
    middleAside: (right + left) / 2,
  }
}
