import type { Surface } from '#core/survey'
import type { Neighbourhood } from './neighbours'
import { standingClasses } from './standing-classes'
import { standingScales } from './standing-scales'
import { topographicPositionM } from './topographic-position'

/** Topographic position at one scale. */
interface Standing {
  /** Radius of the round window looked over [m]. */
  readonly radiusM: number
  /** Level above (+) or below (-) the mean of the window, the cell itself counted [m]. */
  readonly indexM: Float64Array
  /** Weiss 2001: 1 ridge, 2 upper slope, 3 middle slope, 4 flat, 5 lower slope, 6 valley. */
  readonly classes: Uint8Array
}

/** Topographic position close around and far around. */
export interface Standings {
  readonly small: Standing
  readonly large: Standing
}

/**
 * How every cell stands to the ground around it, at two scales chosen from the plot.
 *
 * @param surface - the ground
 * @param hood - its cells and their neighbours
 * @param slopeDeg - steepness of each cell [°]
 * @returns topographic position and its classes at a small and at a large scale
 */
export function standingsOf(surface: Surface, hood: Neighbourhood, slopeDeg: Float64Array): Standings {
  const { small, large } = standingScales(surface)
  const at = (radiusCells: number): Standing => {
    const indexM = topographicPositionM(surface.levelM, hood, radiusCells)
    return {
      radiusM: radiusCells * surface.frame.cellM,
      indexM,
      classes: standingClasses(indexM, slopeDeg, hood),
    }
  }
  return { small: at(small), large: at(large) }
}
