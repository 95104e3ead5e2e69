import type { GridFrame, Ring, Tin } from '#core/geometry'

/** The ground as a regular grid of cells. */
export interface Surface {
  readonly frame: GridFrame
  /** Level of each cell centre [m]; read only where `share` is above 0. */
  readonly levelM: Float64Array
  /** Part of each cell inside the plot's boundary, 0 (outside) to 1. */
  readonly share: Float64Array
  readonly boundary: Ring
  /** The triangles the grid was read from; none when the survey already was a grid. */
  readonly tin: Tin | undefined
  /** The first figure of any survey: highest and lowest measured level and their difference [m]. */
  readonly highestM: number
  readonly lowestM: number
  readonly fallM: number
  /** Direction the plot as a whole faces, clockwise from true north [°]; undefined on level ground. */
  readonly facesDeg: number | undefined
}
