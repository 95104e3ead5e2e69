import type { PlanPoint } from './geometry.types'

/** Sides of an upright box [m]. */
export interface PlanBox {
  readonly westM: number
  readonly southM: number
  readonly eastM: number
  readonly northM: number
}

/** Whether something meets a box, given by its west, south, east and north sides [m]. */
type MeetsBox = (westM: number, southM: number, eastM: number, northM: number) => boolean

/** Things with their boxes, found without looking at each of them. */
export interface BoxIndex {
  /** Calls `visit` with the number of each thing whose box `meets` says yes to. */
  readonly search: (meets: MeetsBox, visit: (item: number) => void) => void
}

/** Boxes gathered under one larger box [boxes]; between 8 and 32 it makes little difference. */
const BRANCH = 16

/**
 * Lays boxes into a tree, near ones together, so that those meeting a place are found quickly.
 *
 * @param count - number of things [count]
 * @param boxOf - box of a thing by its number [m]
 * @returns the tree; empty when there is nothing
 * @see Leutenegger, Lopez and Edgington 1997, Proc. 13th International Conference on Data Engineering: 497-506
 */
export function boxIndex(count: number, boxOf: (item: number) => PlanBox): BoxIndex {
  const sides = new Float64Array(count * 4)
  for (let item = 0; item < count; item++) {
    const box = boxOf(item)
    sides.set([box.westM, box.southM, box.eastM, box.northM], item * 4)
  }
  const order = tiled(sides, count)
  const leaves = new Float64Array(count * 4)
  order.forEach((item, at) => leaves.set(sides.subarray(item * 4, item * 4 + 4), at * 4))
  const levels = [leaves]
  for (let top = leaves; top.length > 4;) levels.push((top = gathered(top)))
  return {
    search: (meets, visit) => {
      if (count > 0) descend(levels, { level: levels.length - 1, at: 0 }, meets, (at) => visit(order[at]!))
    },
  }
}

/**
 * Asks whether boxes come near a straight piece of line.
 *
 * @param from - one end [m]
 * @param to - the other end, may be the same [m]
 * @param reachM - how near counts [m], 0 or more
 * @returns the question to search an index with; it may say yes to boxes just out of reach, never no to one within
 */
export function nearPiece(from: PlanPoint, to: PlanPoint, reachM: number): MeetsBox {
  const west = Math.min(from.eastM, to.eastM) - reachM
  const east = Math.max(from.eastM, to.eastM) + reachM
  const south = Math.min(from.northM, to.northM) - reachM
  const north = Math.max(from.northM, to.northM) + reachM
  const [alongEast, alongNorth] = [to.eastM - from.eastM, to.northM - from.northM]
  const lengthM = Math.hypot(alongEast, alongNorth)
  return (westM, southM, eastM, northM) => {
    if (westM > east || eastM < west || southM > north || northM < south) return false
    const [middleEast, middleNorth] = [(westM + eastM) / 2, (southM + northM) / 2]
    const off = alongEast * (middleNorth - from.northM) - alongNorth * (middleEast - from.eastM)
    const half = (Math.abs(alongNorth) * (eastM - westM) + Math.abs(alongEast) * (northM - southM)) / 2
    return Math.abs(off) <= (half + reachM * lengthM) * (1 + Number.EPSILON * 8)
  }
}

/**
 * Asks whether boxes meet a box.
 *
 * @param box - the box [m]
 * @returns the question to search an index with
 */
export function meetingBox(box: PlanBox): MeetsBox {
  return (westM, southM, eastM, northM) =>
    westM <= box.eastM && eastM >= box.westM && southM <= box.northM && northM >= box.southM
}

// Sorted into upright slabs of equal count, and within each from south to north.
function tiled(sides: Float64Array, count: number): Uint32Array {
  const order = Uint32Array.from({ length: count }, (_, item) => item)
  const middle = (item: number, side: 0 | 1) => sides[item * 4 + side]! + sides[item * 4 + side + 2]!
  order.sort((one, other) => middle(one, 0) - middle(other, 0))
  const slab = Math.ceil(Math.sqrt(count / BRANCH)) * BRANCH
  for (let first = 0; first < count; first += slab)
    order.subarray(first, first + slab).sort((one, other) => middle(one, 1) - middle(other, 1))
  return order
}

function gathered(boxes: Float64Array) {
  const count = Math.ceil(boxes.length / 4 / BRANCH)
  const larger = new Float64Array(count * 4)
  for (let at = 0; at < count; at++) {
    let [west, south, east, north] = [Infinity, Infinity, -Infinity, -Infinity]
    const end = Math.min(boxes.length, (at + 1) * BRANCH * 4)
    for (let side = at * BRANCH * 4; side < end; side += 4) {
      west = Math.min(west, boxes[side]!)
      south = Math.min(south, boxes[side + 1]!)
      east = Math.max(east, boxes[side + 2]!)
      north = Math.max(north, boxes[side + 3]!)
    }
    larger.set([west, south, east, north], at * 4)
  }
  return larger
}

interface Branch {
  readonly level: number
  readonly at: number
}

function descend(
  levels: readonly Float64Array[],
  { level, at }: Branch,
  meets: MeetsBox,
  visit: (at: number) => void,
): void {
  const boxes = levels[level]!
  if (!meets(boxes[at * 4]!, boxes[at * 4 + 1]!, boxes[at * 4 + 2]!, boxes[at * 4 + 3]!)) return
  if (level === 0) {
    visit(at)
    return
  }
  const below = levels[level - 1]!.length / 4
  for (let branch = at * BRANCH; branch < Math.min(below, (at + 1) * BRANCH); branch++)
    descend(levels, { level: level - 1, at: branch }, meets, visit)
}
