import type { GridFrame } from '#core/geometry'
import type { Parts } from './connected-parts'

/** A figure of every cell, and the difference that counts as one step apart. */
export interface Trait {
  readonly values: ArrayLike<number>
  readonly step: number
}

/** Parts with what is needed to compare them. */
export interface PartTable {
  /** Area of each part, in whole cells [cells]. */
  readonly cells: Float64Array
  /** Mean of each trait in steps, trait by trait within a part. */
  readonly means: readonly Float64Array[]
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
  const cells = new Float64Array(parts.count)
  const means = traits.map(() => new Float64Array(parts.count))
  parts.partOfCell.forEach((part, cell) => {
    if (part < 0) return
    const weight = share[cell] ?? 0
    cells[part] = (cells[part] ?? 0) + weight
    traits.forEach(({ values, step }, at) => {
      const sums = means[at]
      if (sums) sums[part] = (sums[part] ?? 0) + (weight * (values[cell] ?? 0)) / step
    })
  })
  for (const sums of means) sums.forEach((sum, part) => (sums[part] = sum / (cells[part] ?? 1)))
  return { cells, means, neighbours: neighboursOf(parts, frame) }
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
  return Math.hypot(...table.means.map((means) => (means[one] ?? 0) - (means[other] ?? 0)))
}

function neighboursOf(parts: Parts, frame: GridFrame): Set<number>[] {
  const sets = Array.from({ length: parts.count }, () => new Set<number>())
  const join = (one: number, other: number) => {
    if (one < 0 || other < 0 || one === other) return
    sets[one]?.add(other)
    sets[other]?.add(one)
  }
  parts.partOfCell.forEach((part, cell) => {
    if (part < 0) return
    const column = cell % frame.columns
    const near = [cell + frame.columns]
    if (column < frame.columns - 1) near.push(cell + 1, cell + frame.columns + 1)
    if (column > 0) near.push(cell + frame.columns - 1)
    for (const at of near) join(part, parts.partOfCell[at] ?? -1)
  })
  return sets
}
