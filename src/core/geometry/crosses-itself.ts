import { boxIndex, nearPiece } from './box-index'
import type { PlanPoint, Ring } from './geometry.types'
import { boxAround } from './grid-frame'
import { sides } from './ring-measures'

/**
 * Finds two sides of an outline that cross.
 *
 * @param ring - outline in plan [m]
 * @returns numbers of the two sides [count], the first side being 0; undefined when the outline is sound
 */
export function crossesItself(ring: Ring): readonly [number, number] | undefined {
  const all = sides(ring)
  const index = boxIndex(all.length, (side) => boxAround(all[side]!))
  for (const [one, [from, to]] of all.entries()) {
    let least = Infinity
    index.search(nearPiece(from, to, 0), (other) => {
      const beside = other < one + 2 || (one === 0 && other === all.length - 1)
      if (!beside && other < least && segmentsCross(from, to, ...all[other]!)) least = other
    })
    if (least < Infinity) return [one, least]
  }
  return undefined
}

function segmentsCross(a: PlanPoint, b: PlanPoint, c: PlanPoint, d: PlanPoint): boolean {
  const boxesApart =
    Math.max(a.eastM, b.eastM) < Math.min(c.eastM, d.eastM) ||
    Math.max(c.eastM, d.eastM) < Math.min(a.eastM, b.eastM) ||
    Math.max(a.northM, b.northM) < Math.min(c.northM, d.northM) ||
    Math.max(c.northM, d.northM) < Math.min(a.northM, b.northM)
  if (boxesApart) return false
  return turn(a, b, c) * turn(a, b, d) <= 0 && turn(c, d, a) * turn(c, d, b) <= 0
}

// Which way the path from, over, to turns: 1 left, -1 right, 0 straight.
function turn(from: PlanPoint, over: PlanPoint, to: PlanPoint): number {
  return Math.sign(
    (over.eastM - from.eastM) * (to.northM - from.northM) -
      (over.northM - from.northM) * (to.eastM - from.eastM),
  )
}
