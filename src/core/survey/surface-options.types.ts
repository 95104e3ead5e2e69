import type { Ring } from '#core/geometry'

/** What the person may add to a survey. */
export interface SurfaceOptions {
  /** Outline of the plot [m]; the survey's own extent when left out. */
  readonly boundary?: Ring | undefined
  /** Parts of the plot that are no ground [m]: ponds, buildings. */
  readonly holes?: readonly Ring[] | undefined
  /** Side of a grid cell [m]; chosen from the plot when left out. */
  readonly cellM?: number | undefined
}
