import type { Surface } from '#core/survey'

/** The eight neighbours of a cell, clockwise from north: cells to the east and to the north. */
export const eightWays = [
  { east: 0, north: 1 },
  { east: 1, north: 1 },
  { east: 1, north: 0 },
  { east: 1, north: -1 },
  { east: 0, north: -1 },
  { east: -1, north: -1 },
  { east: -1, north: 0 },
  { east: -1, north: 1 },
] as const

/** Plan length of the way to each neighbour [cells]. */
export const wayLengths = eightWays.map((way) => Math.hypot(way.east, way.north))

/** All eight neighbours lie in the plot. */
export const ALL_AROUND = 255

/** Which cells lie in the plot, and which of their neighbours do. */
export interface Neighbourhood {
  readonly columns: number
  readonly rows: number
  /** 1 for each cell of the plot. */
  readonly inside: Uint8Array
  /** For each cell of the plot one bit per neighbour, in the order of `eightWays`. */
  readonly around: Uint8Array
  /** What to add to a cell's index to reach each neighbour. */
  readonly offsets: readonly number[]
}

/**
 * The cells of the plot with their neighbours.
 *
 * @param surface - the ground
 * @returns which cells and which of their neighbours lie in the plot
 */
export function neighbourhood(surface: Surface): Neighbourhood {
  const { columns, rows } = surface.frame
  const inside = insideOf(surface.share)
  const around = new Uint8Array(inside.length)
  for (let row = 0; row < rows; row++) {
    const first = row * columns
    const last = first + columns - 1
    if (row === 0 || row === rows - 1)
      for (let cell = first; cell <= last; cell++) around[cell] = bitsAt(inside, cell, columns, rows)
    else bitsInRow(around, inside, first, columns)
    around[first] = bitsAt(inside, first, columns, rows)
    around[last] = bitsAt(inside, last, columns, rows)
  }
  return { columns, rows, inside, around, offsets: eightWays.map((way) => way.east - way.north * columns) }
}

function insideOf(share: Float64Array): Uint8Array {
  const inside = new Uint8Array(share.length)
  for (let cell = 0; cell < inside.length; cell++) if (share[cell]! > 0) inside[cell] = 1
  return inside
}

// All but the two ends of a row that has rows above and below it: no neighbour lies off the grid.
function bitsInRow(around: Uint8Array, inside: Uint8Array, first: number, columns: number): void {
  for (let cell = first + 1; cell < first + columns - 1; cell++) {
    const north = cell - columns
    const south = cell + columns
    const northern = inside[north]! | (inside[north + 1]! << 1) | (inside[north - 1]! << 7)
    const southern = (inside[south + 1]! << 3) | (inside[south]! << 4) | (inside[south - 1]! << 5)
    const bits = northern | (inside[cell + 1]! << 2) | southern | (inside[cell - 1]! << 6)
    around[cell] = inside[cell] ? bits : 0
  }
}

// Any cell, at the edge of the grid too.
function bitsAt(inside: Uint8Array, cell: number, columns: number, rows: number): number {
  if (!inside[cell]) return 0
  const column = cell % columns
  const row = (cell - column) / columns
  let bits = 0
  for (let way = 0; way < eightWays.length; way++) {
    const { east, north } = eightWays[way]!
    const offGrid = column + east < 0 || column + east >= columns || row - north < 0 || row - north >= rows
    if (!offGrid && inside[cell + east - north * columns]) bits |= 1 << way
  }
  return bits
}
