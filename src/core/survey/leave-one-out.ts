import type { LevelPoint } from '#core/geometry'

/** Neighbours beyond the nearest of these say nothing new [points]. */
const MOST_NEIGHBOURS = 24

/** Two neighbours seen this far apart or more have the point between them [°]; own judgement. */
const OPPOSITE_DEG = 150

/** Along a line or an edge that bends, two neighbours this far apart will do [°]; own judgement. */
const FELLOWS_DEG = 90

/** Neighbours whose spread across is less than this share of their spread along tell no plane [m²/m²]; own judgement. */
const LEAST_SPREAD = 0.01

/** What a point is compared with. */
export interface Fellows {
  /** Points it is joined to, by their numbers. */
  readonly neighbours: ArrayLike<number>
  /** Those of them along the line or edge it is on; undefined for a point in open ground. */
  readonly along: readonly number[] | undefined
}

/**
 * How far a level stands above what its neighbours say of its place without it.
 *
 * The neighbours say it in several ways: the plane through them all (least squares, near ones counting more), and the straight
 * line between any two that have the point between them. At a crest or foot some of these hold and others do not, so the one
 * that comes nearest to the level counts; a wrong level is far from all of them.
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
  const inLine = along && betweenM(seenFrom(points, here, along), FELLOWS_DEG)
  if (inLine?.length === 0) return undefined
  const around = seenFrom(points, here, fellows.neighbours)
  const plane = planeM(around)
  const gaps = [
    ...(inLine ?? []),
    ...betweenM(around, OPPOSITE_DEG),
    ...(plane === undefined ? [] : [plane]),
  ].map((riseM) => -riseM)
  if (gaps.length === 0) return undefined
  return gaps.reduce((least, gapM) => (Math.abs(gapM) < Math.abs(least) ? gapM : least))
}

/** A neighbour as seen from the point: its offset in plan and its rise above it. */
interface Seen {
  readonly x: number
  readonly y: number
  readonly distanceM: number
  readonly riseM: number
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

// What each two neighbours with the point between them say of its place: a rise above its level.
function betweenM(seen: readonly Seen[], leastDeg: number): number[] {
  const mostCosine = Math.cos((leastDeg * Math.PI) / 180) + Number.EPSILON * 4
  return seen.flatMap((one, at) =>
    seen.slice(at + 1).flatMap((other) => {
      const cosine = (one.x * other.x + one.y * other.y) / (one.distanceM * other.distanceM)
      if (cosine > mostCosine) return []
      return [(one.riseM * other.distanceM + other.riseM * one.distanceM) / (one.distanceM + other.distanceM)]
    }),
  )
}

// Rise at the point of the plane nearest to the neighbours, each weighted by the inverse square of its distance.
function planeM(seen: readonly Seen[]): number | undefined {
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
  return middleRiseM - eastGradient * middleX - northGradient * middleY
}
