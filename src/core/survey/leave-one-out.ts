import type { LevelPoint } from '#core/geometry'

/** Neighbours beyond the nearest of these say nothing new [points]. */
const MOST_NEIGHBOURS = 24

/** Two neighbours seen this far apart or more have the point between them [°]; own judgement. */
const OPPOSITE_DEG = 150

/** Along a line or an edge that bends, two neighbours this far apart will do [°]; own judgement. */
const FELLOWS_DEG = 90

/** Neighbours whose spread across is less than this share of their spread along tell no plane [m²/m²]; own judgement. */
const LEAST_SPREAD = 0.01

/** A triangle's plane is carried outwards no farther than this many times the triangle's own size [m/m]; own judgement. */
const MOST_REACH = 2

/** What a point is compared with. */
export interface Fellows {
  /** Points it is joined to, by their numbers. */
  readonly neighbours: ArrayLike<number>
  /** Those along the line or edge it is on; undefined for a point in open ground. */
  readonly along: readonly number[] | undefined
  /** Triangles just beyond its own. */
  readonly beyond: readonly (readonly [number, number, number])[]
}

/**
 * How far a level stands above what its neighbours say of its place without it.
 *
 * The neighbours say it in several ways: the plane through them all (least squares, near ones counting more), the straight
 * line between any two that have the point between them, and the planes of the triangles just beyond. At a crest or foot some
 * of these hold and others do not, so the one that comes nearest to the level counts; a wrong level is far from all of them.
 *
 * @param points - points with levels [m]
 * @param point - number of the point [count]
 * @param fellows - what it is compared with
 * @returns difference [m], above 0 where the level is higher; undefined when the neighbours cannot tell
 */
export function leaveOneOutM(
  points: readonly LevelPoint[],
  point: number,
  fellows: Fellows,
): number | undefined {
  const here = points[point]!
  const { along } = fellows
  const around = seenFrom(points, here, fellows.neighbours)
  const plane = planeOf(around)
  const inLine = along && between(seenFrom(points, here, along), FELLOWS_DEG, plane)
  if (inLine?.length === 0) return undefined
  const rises = [
    ...(inLine ?? []),
    ...between(around, OPPOSITE_DEG, plane),
    ...(plane ? [plane.riseM] : []),
    ...fellows.beyond.flatMap((corners) => carriedOver(seenFrom(points, here, corners)) ?? []),
  ]
  if (rises.length === 0) return undefined
  return -rises.reduce((least, riseM) => (Math.abs(riseM) < Math.abs(least) ? riseM : least))
}

/** A neighbour as seen from the point: its offset in plan and its rise above it. */
interface Seen {
  readonly x: number
  readonly y: number
  readonly distanceM: number
  readonly riseM: number
}

/** A plane as seen from the point. */
interface SeenPlane {
  readonly riseM: number
  readonly eastGradient: number
  readonly northGradient: number
}

function seenFrom(points: readonly LevelPoint[], here: LevelPoint, others: ArrayLike<number>): Seen[] {
  return Array.from(others, (other) => {
    const { eastM, northM, levelM } = points[other]!
    const [x, y] = [eastM - here.eastM, northM - here.northM]
    return { x, y, distanceM: Math.hypot(x, y), riseM: levelM - here.levelM }
  })
    .sort((one, other) => one.distanceM - other.distanceM || one.riseM - other.riseM)
    .slice(0, MOST_NEIGHBOURS)
}

// What each two neighbours with the point between them say of its place; what it lies beside their line follows the plane.
function between(seen: readonly Seen[], leastDeg: number, plane: SeenPlane | undefined): number[] {
  const mostCosine = Math.cos((leastDeg * Math.PI) / 180) + Number.EPSILON * 4
  return seen.flatMap((one, at) =>
    seen.slice(at + 1).flatMap((other) => {
      const cosine = (one.x * other.x + one.y * other.y) / (one.distanceM * other.distanceM)
      if (cosine > mostCosine) return []
      const share = one.distanceM / (one.distanceM + other.distanceM)
      const mix = (from: number, to: number) => from + share * (to - from)
      const [x, y] = [mix(one.x, other.x), mix(one.y, other.y)]
      const aside = plane ? plane.eastGradient * x + plane.northGradient * y : 0
      return [mix(one.riseM, other.riseM) - aside]
    }),
  )
}

// The plane nearest to the neighbours, each weighted by the inverse square of its distance.
function planeOf(seen: readonly Seen[]): SeenPlane | undefined {
  if (seen.length < 3) return undefined
  const weights = seen.map(({ distanceM }) => 1 / distanceM ** 2)
  const total = weights.reduce((sum, weight) => sum + weight, 0)
  const mean = (of: (one: Seen) => number) =>
    seen.reduce((sum, one, at) => sum + weights[at]! * of(one), 0) / total
  const [middleX, middleY, middleRiseM] = [mean(({ x }) => x), mean(({ y }) => y), mean(({ riseM }) => riseM)]
  const spread = (of: (dx: number, dy: number, rise: number) => number) =>
    mean(({ x, y, riseM }) => of(x - middleX, y - middleY, riseM - middleRiseM))
  const [xx, xy, yy] = [spread((x) => x * x), spread((x, y) => x * y), spread((_, y) => y * y)]
  const [xz, yz] = [spread((x, _, z) => x * z), spread((_, y, z) => y * z)]
  const determinant = xx * yy - xy * xy
  if (!(determinant > LEAST_SPREAD * (xx + yy) ** 2)) return undefined
  const eastGradient = (xz * yy - yz * xy) / determinant
  const northGradient = (yz * xx - xz * xy) / determinant
  return {
    riseM: middleRiseM - eastGradient * middleX - northGradient * middleY,
    eastGradient,
    northGradient,
  }
}

// The plane of a triangle carried to the point, unless that is too far for so small a triangle.
function carriedOver(corners: readonly Seen[]): number | undefined {
  const [a, b, c] = corners
  if (!a || !b || !c) return undefined
  const doubled = (b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y)
  const shares = [b.x * c.y - c.x * b.y, c.x * a.y - a.x * c.y, a.x * b.y - b.x * a.y]
  if (shares.some((share) => !(Math.abs(share) <= MOST_REACH * Math.abs(doubled)))) return undefined
  return (shares[0]! * a.riseM + shares[1]! * b.riseM + shares[2]! * c.riseM) / doubled
}
