import type { GridFrame } from '#core/geometry'
import type { Parts } from './connected-parts'

/** What parts are compared by, and the difference that counts as one step apart. */
export interface Trait {
  /** One figure of every cell, or several that measure the same in different ways: the least difference counts. */
  readonly measures: readonly ArrayLike<number>[]
  readonly step: number
}

/** Parts with what is needed to compare them. */
export interface PartTable {
  /** Area of each part, in whole cells [cells]. */
  readonly cells: Float64Array
  /** For each trait and each of its measures the mean of every part [steps]. */
  readonly means: readonly (readonly Float64Array[])[]
  readonly neighbours: readonly ReadonlySet<number>[]
}

/**
 * Measures parts and finds which lie side by side or corner to corner.
 *
 * @param parts - the parts
 * @param share - part of each cell inside the plot, 0 to 1 [ratio]
 * @param frame - where the cells lie
 * @param traits - what parts are compared by
 * @returns areas, means and neighbours of the parts
 */
export function tableOfParts(
  parts: Parts,
  share: Float64Array,
  frame: GridFrame,
  traits: readonly Trait[],
): PartTable {
  const cells = partSums(parts, share)
  const meanSteps = (values: ArrayLike<number>, step: number) =>
    weightedSums(parts, share, values).map((sum, part) => sum / (cells[part] ?? 1) / step)
  return {
    cells,
    means: traits.map(({ measures, step }) => measures.map((values) => meanSteps(values, step))),
    neighbours: neighboursOf(parts, frame),
  }
}

/**
 * How unlike two parts are.
 *
 * @param table - the measured parts
 * @param one - number of a part
 * @param other - number of a part
 * @returns distance between their means [steps], 0 or more
 */
export function stepsApart(table: PartTable, one: number, other: number): number {
  const gaps = table.means.map((measures) =>
    Math.min(...measures.map((means) => Math.abs((means[one] ?? 0) - (means[other] ?? 0)))),
  )
  return Math.hypot(...gaps)
}

// Sum of the shares of the cells of each part.
function partSums(parts: Parts, share: Float64Array): Float64Array {
  const sums = new Float64Array(parts.count)
  addShares(sums, parts.partOfCell, share)
  return sums
}

function addShares(sums: Float64Array, partOfCell: Int32Array, share: Float64Array): void {
  for (let cell = 0; cell < partOfCell.length; cell++) {
    const part = partOfCell[cell]!
    if (part >= 0) sums[part]! += share[cell]!
  }
}

// Sum of a figure over the cells of each part, each weighted by its share.
function weightedSums(parts: Parts, share: Float64Array, values: ArrayLike<number>): Float64Array {
  const sums = new Float64Array(parts.count)
  addWeighted(sums, parts.partOfCell, share, values)
  return sums
}

function addWeighted(
  sums: Float64Array,
  partOfCell: Int32Array,
  share: Float64Array,
  values: ArrayLike<number>,
): void {
  for (let cell = 0; cell < partOfCell.length; cell++) {
    const part = partOfCell[cell]!
    if (part >= 0) sums[part]! += share[cell]! * values[cell]!
  }
}

function neighboursOf({ partOfCell, count }: Parts, { columns }: GridFrame): Set<number>[] {
  const sets = Array.from({ length: count }, () => new Set<number>())
  for (let cell = 0; cell < partOfCell.length; cell++) {
    const part = partOfCell[cell]!
    if (part < 0) continue
    const column = cell % columns
    const below = cell + columns < partOfCell.length
    if (column < columns - 1) join(sets, part, partOfCell[cell + 1]!)
    if (!below) continue
    join(sets, part, partOfCell[cell + columns]!)
    if (column < columns - 1) join(sets, part, partOfCell[cell + columns + 1]!)
    if (column > 0) join(sets, part, partOfCell[cell + columns - 1]!)
  }
  return sets
}

function join(sets: readonly Set<number>[], one: number, other: number): void {
  if (other < 0 || one === other) return
  sets[one]?.add(other)
  sets[other]?.add(one)
}
