import type { Surface } from '#core/survey'

/** Radius of the two windows as a share of the side of a square as large as the plot [m/m]; own judgement. */
const SMALL_SHARE = 1 / 16
const LARGE_SHARE = 1 / 4

/** Smallest window: a cell and its eight neighbours [cells]. */
const LEAST_CELLS = 1.5

/** Largest window, for the sake of time [cells]. */
const MOST_CELLS = 64

/**
 * Radii at which a plot's topographic position is looked at: a small one that sees banks and ledges, a large one that
 * sees the whole slope.
 *
 * @param surface - the ground
 * @returns radii [cells], 1.5 to 64
 */
export function standingScales(surface: Surface): { readonly small: number; readonly large: number } {
  let cells = 0
  for (const part of surface.share) cells += part
  const side = Math.sqrt(cells)
  const within = (radius: number) => Math.min(MOST_CELLS, Math.max(LEAST_CELLS, radius))
  return { small: within(side * SMALL_SHARE), large: within(side * LARGE_SHARE) }
}
