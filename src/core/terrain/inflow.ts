import type { Surface } from '#core/survey'
import { boundaryPieces, stretchFinder, type BoundaryPiece, type BoundaryStretch } from './boundary-pieces'
import { localPlane } from './local-plane'
import { neighbourhood } from './neighbours'

/** A piece of the boundary over which ground beyond sheds onto the plot. */
export interface EdgeEntry<Stretch extends BoundaryStretch> {
  /** The cell that takes the water. */
  readonly cell: number
  /** Width across the fall [m]. */
  readonly widthM: number
  /** What the person said lies there; undefined where nothing was said. */
  readonly stretch: Stretch | undefined
}

/**
 * Where water would come onto the plot: the pieces of its boundary with the ground falling inwards, each as wide as it
 * is across the fall.
 *
 * @param surface - the ground
 * @param stretches - stretches of the boundary that were described
 * @returns the pieces with their widths [m]
 */
export function edgeEntries<Stretch extends BoundaryStretch>(
  surface: Surface,
  stretches: readonly Stretch[],
): readonly EdgeEntry<Stretch>[] {
  const hood = neighbourhood(surface)
  const stretchAt = stretchFinder(surface.boundary, stretches)
  return boundaryPieces(surface).flatMap((piece) => {
    const { eastRiseM, northRiseM } = localPlane(surface, hood, piece.cell)
    const widthM = widthAcrossM(piece, eastRiseM, northRiseM)
    if (!(widthM > 0)) return []
    return [{ cell: piece.cell, widthM, stretch: stretchAt((piece.fromM + piece.toM) / 2) }]
  })
}

// The part of a piece's length that lies across the fall, where the ground rises outwards; else 0 or less.
function widthAcrossM(piece: BoundaryPiece, eastRise: number, northRise: number): number {
  const steepness = Math.hypot(eastRise, northRise)
  if (steepness === 0) return 0
  return ((piece.toM - piece.fromM) * (piece.outEast * eastRise + piece.outNorth * northRise)) / steepness
}

/** A described stretch with the way that the ground beyond it rises. */
export interface SheddingStretch extends BoundaryStretch {
  /** How far the ground beyond rises and sheds onto the plot [m plan]; none when undefined. */
  readonly uphillM?: number | undefined
}

/**
 * Plan area off the plot that drains onto each cell at its edge: for every piece of a described stretch, its width across
 * the fall by the way the ground beyond rises.
 *
 * @param surface - the ground
 * @param stretches - what was described of the boundary
 * @returns area for each cell [m²]; undefined when none drains onto the plot
 * @throws RangeError when a way uphill is negative
 */
export function inflowM2(surface: Surface, stretches: readonly SheddingStretch[]): Float64Array | undefined {
  for (const { id, uphillM = 0 } of stretches)
    if (!(uphillM >= 0)) throw new RangeError(`inflowM2: uphillM of ${id} must be 0 or more, got ${uphillM}`)
  if (!stretches.some(({ uphillM = 0 }) => uphillM > 0)) return undefined
  const areaM2 = new Float64Array(surface.share.length)
  for (const { cell, widthM, stretch } of edgeEntries(surface, stretches))
    areaM2[cell]! += widthM * (stretch?.uphillM ?? 0)
  return areaM2
}
