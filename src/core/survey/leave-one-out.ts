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
  const rises: number[] = []
  if (along) {
    addBetween(rises, seenFrom(points, here, along), FELLOWS_DEG, plane)
    if (rises.length === 0) return undefined
  }
  addBetween(rises, around, OPPOSITE_DEG, plane)
  if (plane) rises.push(plane.riseM)
  for (const corners of fellows.beyond) addCarriedOver(rises, seenFrom(points, here, corners))
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
  const seen: Seen[] = []
  for (let at = 0; at < others.length; at++) {
    const { eastM, northM, levelM } = points[others[at]!]!
    const [x, y] = [eastM - here.eastM, northM - here.northM]
    seen.push({ x, y, distanceM: Math.hypot(x, y), riseM: levelM - here.levelM })
  }
  if (seen.length <= MOST_NEIGHBOURS) return seen
  return seen
    .sort((one, other) => one.distanceM - other.distanceM || one.riseM - other.riseM)
    .slice(0, MOST_NEIGHBOURS)
}

// What each two neighbours with the point between them say of its place; what it lies beside their line follows the plane.
function addBetween(
  rises: number[],
  seen: readonly Seen[],
  leastDeg: number,
  plane: SeenPlane | undefined,
): void {
  const mostCosine = Math.cos((leastDeg * Math.PI) / 180) + Number.EPSILON * 4
  const [eastGradient, northGradient] = [plane?.eastGradient ?? 0, plane?.northGradient ?? 0]
  for (let at = 0; at < seen.length; at++) {
    const one = seen[at]!
    for (let after = at + 1; after < seen.length; after++) {
      const other = seen[after]!
      if (one.x * other.x + one.y * other.y > mostCosine * one.distanceM * other.distanceM) continue
      const share = one.distanceM / (one.distanceM + other.distanceM)
      const x = one.x + share * (other.x - one.x)
      const y = one.y + share * (other.y - one.y)
      const riseM = one.riseM + share * (other.riseM - one.riseM)
      rises.push(riseM - eastGradient * x - northGradient * y)
    }
  }
}

// The plane nearest to the neighbours, each weighted by the inverse square of its distance.
function planeOf(seen: readonly Seen[]): SeenPlane | undefined {
  if (seen.length < 3) return undefined
  const middle = middleOf(seen)
  let [xx, xy, yy, xz, yz] = [0, 0, 0, 0, 0]
  for (const { x, y, riseM, distanceM } of seen) {
    const weight = 1 / distanceM ** 2
    const [dx, dy, dz] = [x - middle.x, y - middle.y, riseM - middle.riseM]
    xx += weight * dx * dx
    xy += weight * dx * dy
    yy += weight * dy * dy
    xz += weight * dx * dz
    yz += weight * dy * dz
  }
  const determinant = xx * yy - xy * xy
  if (!(determinant > LEAST_SPREAD * (xx + yy) ** 2)) return undefined
  const eastGradient = (xz * yy - yz * xy) / determinant
  const northGradient = (yz * xx - xz * xy) / determinant
  const riseM = middle.riseM - eastGradient * middle.x - northGradient * middle.y
  return { riseM, eastGradient, northGradient }
}

function middleOf(seen: readonly Seen[]) {
  let [total, sumX, sumY, sumRise] = [0, 0, 0, 0]
  for (const { x, y, riseM, distanceM } of seen) {
    const weight = 1 / distanceM ** 2
    total += weight
    sumX += weight * x
    sumY += weight * y
    sumRise += weight * riseM
  }
  return { x: sumX / total, y: sumY / total, riseM: sumRise / total }
}

// The plane of a triangle carried to the point, unless that is too far for so small a triangle.
function addCarriedOver(rises: number[], [a, b, c]: readonly Seen[]): void {
  if (!a || !b || !c) return
  const doubled = (b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y)
  const most = MOST_REACH * Math.abs(doubled)
  const [ofA, ofB, ofC] = [b.x * c.y - c.x * b.y, c.x * a.y - a.x * c.y, a.x * b.y - b.x * a.y]
  if (!(Math.max(Math.abs(ofA), Math.abs(ofB), Math.abs(ofC)) <= most) || most === 0) return
  rises.push((ofA * a.riseM + ofB * b.riseM + ofC * c.riseM) / doubled)
}
