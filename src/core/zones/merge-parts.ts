import type { GridFrame } from '#core/geometry'
import type { Parts } from './connected-parts'
import { ALIKE_STEPS, EASY_ALIKE_STEPS, EASY_ZONES, MOST_ZONES, SMALLEST_SHARE } from './limits'
import { stepsApart, tableOfParts, type PartTable, type Trait } from './part-likeness'

/** The ground under the parts, and what they are compared by. */
export interface PartGround {
  readonly share: Float64Array
  readonly frame: GridFrame
  readonly traits: readonly Trait[]
}

/**
 * Merges parts that are too small into their most alike neighbour, then neighbours that are alike, less so
 * the more zones there are.
 *
 * @param parts - the parts, as found
 * @param ground - shares, frame and traits
 * @returns at most the greatest number of zones, unless more pieces than that do not touch
 */
export function mergeParts(parts: Parts, ground: PartGround): Parts {
  return mergeAlike(mergeSmall(parts, ground), ground)
}

// Smallest first, doubling the limit at each pass, so that specks gather before they are judged.
function mergeSmall(parts: Parts, ground: PartGround): Parts {
  const leastCells = SMALLEST_SHARE * ground.share.reduce((sum, share) => sum + share, 0)
  let merged = parts
  for (let limit = Math.min(1, leastCells); ; limit = Math.min(2 * limit, leastCells)) {
    const table = tableOfParts(merged, ground.share, ground.frame, ground.traits)
    const into = smallInto(table, limit)
    merged = renumber(merged, into)
    if (limit === leastCells && into.every((target, part) => target === part)) return merged
  }
}

// For each part the part it becomes.
function smallInto(table: PartTable, limitCells: number): number[] {
  const into = Array.from(table.cells, (_, part) => part)
  const rootOf = (part: number): number => {
    const next = into[part] ?? part
    return next === part ? part : rootOf(next)
  }
  table.cells.forEach((cells, part) => {
    if (cells >= limitCells || table.cells.length < 2) return
    const target = mostAlike(table, part)
    if (target !== undefined) into[rootOf(part)] = rootOf(target)
  })
  return into.map((_, part) => rootOf(part))
}

// The most alike neighbour, or the most alike part anywhere for a part that touches none.
function mostAlike(table: PartTable, part: number): number | undefined {
  const touching = [...(table.neighbours[part] ?? [])]
  const choice = touching.length > 0 ? touching : Array.from(table.cells, (_, at) => at)
  return choice
    .filter((at) => at !== part)
    .reduce<number | undefined>(
      (best, at) =>
        best === undefined || stepsApart(table, part, at) < stepsApart(table, part, best) ? at : best,
      undefined,
    )
}

function mergeAlike(parts: Parts, ground: PartGround): Parts {
  let merged = parts
  for (;;) {
    const table = tableOfParts(merged, ground.share, ground.frame, ground.traits)
    const pair = mostAlikePair(table)
    if (!pair || pair.apart >= joiningSteps(merged.count)) return merged
    merged = renumber(
      merged,
      Array.from(table.cells, (_, part) => (part === pair.other ? pair.one : part)),
    )
  }
}

// How far apart neighbours may be and still join, the farther the more zones there are.
function joiningSteps(count: number): number {
  if (count > MOST_ZONES) return Infinity
  return count > EASY_ZONES ? EASY_ALIKE_STEPS : ALIKE_STEPS
}

interface Pair {
  readonly one: number
  readonly other: number
  readonly apart: number
}

function mostAlikePair(table: PartTable): Pair | undefined {
  let best: Pair | undefined
  table.neighbours.forEach((near, one) => {
    for (const other of near) {
      const apart = stepsApart(table, one, other)
      if (other > one && (!best || apart < best.apart)) best = { one, other, apart }
    }
  })
  return best
}

// Parts after each became another, numbered anew without gaps.
function renumber(parts: Parts, into: readonly number[]): Parts {
  const partOfCell = parts.partOfCell.slice()
  const numbers = new Int32Array(parts.count).fill(-1)
  return { partOfCell, count: enterNumbers(partOfCell, into, numbers) }
}

// Numbers parts in the order in which they are met; returns how many there are.
function enterNumbers(partOfCell: Int32Array, into: readonly number[], numbers: Int32Array): number {
  let count = 0
  for (let cell = 0; cell < partOfCell.length; cell++) {
    const part = partOfCell[cell]!
    if (part < 0) continue
    const target = into[part]!
    if (numbers[target] === -1) numbers[target] = count++
    partOfCell[cell] = numbers[target]!
  }
  return count
}
