import type { Neighbourhood } from './neighbours'

/**
 * Mean of a field over a round window about every cell, the cell itself counted; the window is cut at the boundary.
 *
 * A cell belongs to the window when its centre lies no farther than the radius. Each row of the window is one
 * difference of running sums, so the work grows with the radius, not with the window's area.
 *
 * @param values - value of each cell [any unit]
 * @param hood - cells of the plot
 * @param radiusCells - radius of the window [cells], 0 or more
 * @returns mean around each cell [same unit]; 0 outside the plot
 * @throws RangeError when the radius is negative or not finite
 */
export function meanAround(values: Float64Array, hood: Neighbourhood, radiusCells: number): Float64Array {
  if (!(radiusCells >= 0 && radiusCells < Infinity))
    throw new RangeError(`meanAround: radiusCells must be 0 or more, got ${radiusCells}`)
  const { columns, rows, inside } = hood
  const base = baseOf(values, inside)
  const sums = runningSums(values, hood, base)
  const counts = runningSums(inside, hood, 0)
  const spans = halfWidths(Math.min(radiusCells, columns + rows))
  const mean = new Float64Array(values.length)
  const total = new Float64Array(columns)
  const number = new Float64Array(columns)
  for (let row = 0; row < rows; row++) {
    total.fill(0)
    number.fill(0)
    for (let down = Math.max(-row, 1 - spans.length); down < Math.min(rows - row, spans.length); down++) {
      const start = (row + down) * (columns + 1)
      const half = spans[Math.abs(down)]!
      addRow(total, sums, start, half)
      addRow(number, counts, start, half)
    }
    for (let column = 0; column < columns; column++)
      if (inside[row * columns + column])
        mean[row * columns + column] = base + total[column]! / number[column]!
  }
  return mean
}

// Some value of the plot: sums of what differs from it keep more digits.
function baseOf(values: Float64Array, inside: Uint8Array): number {
  const first = inside.indexOf(1)
  return first < 0 ? 0 : values[first]!
}

// Sum of all values west of each cell line, row by row; one more line than cells.
function runningSums(values: Float64Array | Uint8Array, hood: Neighbourhood, base: number): Float64Array {
  const { columns, rows, inside } = hood
  const sums = new Float64Array((columns + 1) * rows)
  for (let row = 0; row < rows; row++) {
    let sum = 0
    for (let column = 0; column < columns; column++) {
      const cell = row * columns + column
      if (inside[cell]) sum += values[cell]! - base
      sums[row * (columns + 1) + column + 1] = sum
    }
  }
  return sums
}

// Half width of the window's rows, from its middle outwards [cells].
function halfWidths(radiusCells: number): number[] {
  // Rounding must not leave out a cell that lies on the circle.
  const square = radiusCells * radiusCells + 1e-9
  return Array.from({ length: Math.floor(Math.sqrt(square)) + 1 }, (_, down) =>
    Math.floor(Math.sqrt(square - down * down)),
  )
}

// To every column, what the row of running sums that begins at `start` holds within `half` cells of it.
function addRow(total: Float64Array, sums: Float64Array, start: number, half: number): void {
  const columns = total.length
  const first = Math.min(half, columns)
  const last = Math.max(first, columns - half)
  const whole = sums[start + columns]!
  for (let column = 0; column < first; column++)
    total[column]! += sums[start + Math.min(columns, column + half + 1)]!
  for (let column = first; column < last; column++)
    total[column]! += sums[start + column + half + 1]! - sums[start + column - half]!
  for (let column = last; column < columns; column++) total[column]! += whole - sums[start + column - half]!
}
