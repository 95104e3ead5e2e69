import type { GridFrame, PlanPoint, Ring, Tin } from '#core/geometry'

/** The ground as a regular grid of cells. */
export interface Surface {
  readonly frame: GridFrame
  /** Level of each cell centre [m]; read only where `share` is above 0. */
  readonly levelM: Float64Array
  /** Part of each cell inside the plot's boundary, 0 (outside) to 1. */
  readonly share: Float64Array
  readonly boundary: Ring
  /** Parts of the plot that are no ground: ponds, buildings. Their cells have a smaller share, or none. */
  readonly holes: readonly Ring[]
  /** The triangles the grid was read from; none when the survey already was a grid. */
  readonly tin: Tin | undefined
  /** The first figure of any survey: highest and lowest measured level and their difference [m]. */
  readonly highestM: number
  readonly lowestM: number
  readonly fallM: number
  /** Direction the plot as a whole faces, clockwise from true north [°]; undefined on level ground. */
  readonly facesDeg: number | undefined
  /** What was cleaned up or looks odd, for the person to look at. */
  readonly notes: readonly SurfaceNote[]
}

/** Something put right or doubted while the surface was made. */
export interface SurfaceNote {
  readonly kind:
    | 'merged'
    | 'left-out'
    | 'snapped'
    | 'split'
    | 'outlier'
    | 'spike'
    /** Two levels that should be one. */
    | 'disagreement'
    /** Triangles of a file that lie over one another. */
    | 'overlap'
  /** In a sentence, with the row or the line it is about. */
  readonly what: string
  /** Where it is [m]; undefined when it is of the whole survey. */
  readonly at: PlanPoint | undefined
}
