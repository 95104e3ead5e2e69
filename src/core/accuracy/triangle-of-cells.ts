import { triangleThicknessM, trianglesOverGrid, type GridFrame, type Tin } from '#core/geometry'
import { nearestSource } from '#core/survey'

/** As in reading levels: thinner than this share of the typical triangle is a splinter [m/m]. */
const SPLINTER_SHARE = 0.1

/**
 * The triangle whose plane each cell was read from: the one over its centre, else the nearest well-shaped one.
 *
 * @param tin - the triangles, at least one with an area
 * @param frame - where the grid lies
 * @returns number of a triangle for every cell [count]
 */
export function triangleOfCells(tin: Tin, frame: GridFrame): Int32Array {
  const over = trianglesOverGrid(tin, frame)
  if (!over.includes(-1)) return over
  const thickM = Float64Array.from({ length: tin.corners.length / 3 }, (_, at) => triangleThicknessM(tin, at))
  const leastM = SPLINTER_SHARE * (Float64Array.from(thickM).sort()[thickM.length >> 1] ?? 0)
  const carries = Uint8Array.from(over, (at) => (at >= 0 && (thickM[at] ?? 0) >= leastM ? 1 : 0))
  const nearest = nearestSource(frame, carries)
  const thickest = thickM.indexOf(thickM.reduce((most, one) => Math.max(most, one), 0))
  return over.map((own, cell) => (own >= 0 ? own : (over[nearest[cell] ?? -1] ?? thickest)))
}
