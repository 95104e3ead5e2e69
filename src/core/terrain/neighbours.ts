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
  const offsets = eightWays.map((way) => way.east - way.north * columns)
  for (const [way, { east, north }] of eightWays.entries())
    for (let row = Math.max(0, north); row < rows + Math.min(0, north); row++) {
      const end = row * columns + columns - Math.max(0, east)
      for (let cell = row * columns + Math.max(0, -east); cell < end; cell++)
        if (inside[cell] && inside[cell + (offsets[way] ?? 0)])
          around[cell] = (around[cell] ?? 0) | (1 << way)
    }
  return { columns, rows, inside, around, offsets }
}

function insideOf(share: Float64Array): Uint8Array {
  const inside = new Uint8Array(share.length)
  for (let cell = 0; cell < inside.length; cell++) if ((share[cell] ?? 0) > 0) inside[cell] = 1
  return inside
}
