import { cellCentre, fitPlane, type GridFrame } from '#core/geometry'
import { toDegrees, wholeCircleDeg } from '#core/units'

/** Ground that falls less than this on the whole faces nowhere [m/m]: a millimetre in a kilometre. */
const LEVEL_GRADIENT = 1e-6

/**
 * The direction a plot as a whole faces: downhill on the plane nearest to its cells.
 *
 * @param frame - where the grid lies
 * @param levelM - level of each cell [m]
 * @param share - part of each cell inside the plot [m²/m²]
 * @returns direction faced, clockwise from true north [°]; undefined on level ground
 */
export function facesDegOf(frame: GridFrame, levelM: Float64Array, share: Float64Array): number | undefined {
  const cells = []
  for (let cell = 0; cell < share.length; cell++) {
    const weight = share[cell] ?? 0
    if (!(weight > 0)) continue
    const { eastM, northM } = cellCentre(frame, cell)
    cells.push({ eastM, northM, levelM: levelM[cell] ?? 0, weight })
  }
  const plane = fitPlane(cells)
  if (!plane || Math.hypot(plane.eastGradient, plane.northGradient) < LEVEL_GRADIENT) return undefined
  return wholeCircleDeg(toDegrees(Math.atan2(-plane.eastGradient, -plane.northGradient)))
}
