import type { Surface } from '#core/survey'
import type { Neighbourhood } from './neighbours'
import { standingClasses } from './standing-classes'
import { standingScales } from './standing-scales'
import type { Standing } from './terrain.types'
import { topographicPositionM } from './topographic-position'

/**
 * How every cell stands to the ground around it, at two scales chosen from the plot.
 *
 * @param surface - the ground
 * @param hood - its cells and their neighbours
 * @param slopeDeg - steepness of each cell [°]
 * @returns topographic position and its classes at a small and at a large scale
 */
export function standingsOf(
  surface: Surface,
  hood: Neighbourhood,
  slopeDeg: Float64Array,
): { readonly small: Standing; readonly large: Standing } {
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
