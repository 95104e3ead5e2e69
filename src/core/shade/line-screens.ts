import { sides, type PlanPoint, type Ring } from '#core/geometry'
import type { Screen } from './shade.types'
import type { GroundLevel } from './standing-thing.types'

/** A piece may leave the ground it follows by this much [m]. */
const STRAIGHT_M = 0.02

/**
 * Screens of a wall, fence or hedge: its top follows the ground, read at steps of a cell and cut where the ground bends.
 *
 * @param line - its corners in order [m]; an outline is a line too, its last side left open
 * @param heightM - height above the ground [m]
 * @param level - tells the level of the ground
 * @param stepM - how closely the ground is read [m], above 0
 * @returns the screens, end to end; none for a single point
 */
export function lineScreens(
  line: Ring,
  heightM: number,
  level: GroundLevel,
  stepM: number,
): readonly Screen[] {
  return sides(line)
    .slice(0, -1)
    .flatMap(([from, to]) => {
      const tops = topsAlong(from, to, (at) => level(at) + heightM, stepM)
      return bends(tops, 0, tops.length - 1).flatMap((end, at, ends): Screen[] => {
        const one = tops[ends[at - 1] ?? -1]
        const other = tops[end]
        return one && other ? [{ from: one.at, to: other.at, topFromM: one.topM, topToM: other.topM }] : []
      })
    })
}

interface Top {
  readonly at: PlanPoint
  readonly topM: number
}

function topsAlong(from: PlanPoint, to: PlanPoint, topAt: GroundLevel, stepM: number): readonly Top[] {
  const lengthM = Math.hypot(to.eastM - from.eastM, to.northM - from.northM)
  if (lengthM === 0) return []
  const pieces = Math.ceil(lengthM / stepM)
  return Array.from({ length: pieces + 1 }, (_, step) => {
    const share = step / pieces
    const at =
      step === pieces
        ? to
        : {
            eastM: from.eastM + share * (to.eastM - from.eastM),
            northM: from.northM + share * (to.northM - from.northM),
          }
    return { at, topM: topAt(at) }
  })
}

// Numbers of the tops that must be kept, first and last among them, so that no top leaves its piece by more than allowed.
function bends(tops: readonly Top[], first: number, last: number): number[] {
  if (last < 1) return []
  const kept = [last]
  const open: [number, number][] = [[first, last]]
  for (let piece = open.pop(); piece; piece = open.pop()) {
    const furthest = furthestOff(tops, piece)
    if (furthest === undefined) continue
    kept.push(furthest)
    open.push([piece[0], furthest], [furthest, piece[1]])
  }
  return [first, ...kept.sort((one, other) => one - other)]
}

// Steps are equal, so the level between two tops goes by their numbers.
function furthestOff(tops: readonly Top[], [first, last]: readonly [number, number]): number | undefined {
  const start = tops[first]!.topM
  const perStep = (tops[last]!.topM - start) / (last - first)
  let [most, found]: [number, number | undefined] = [STRAIGHT_M, undefined]
  for (let at = first + 1; at < last; at += 1) {
    const off = Math.abs(tops[at]!.topM - start - perStep * (at - first))
    if (off > most) [most, found] = [off, at]
  }
  return found
}
