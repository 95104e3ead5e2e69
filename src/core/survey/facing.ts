import type { GridFrame } from '#core/geometry'
import { toDegrees, wholeCircleDeg } from '#core/units'

/** Ground that falls less than this on the whole faces nowhere [m/m]: a millimetre in a kilometre. */
const LEVEL_GRADIENT = 1e-6

/** Cells whose spread across is less than this share of their spread along lie in one line [m²/m²]. */
const LINE_SHARE = 1e-12

/**
 * The direction a plot as a whole faces: downhill on the plane nearest to its cells.
 *
 * @param frame - where the grid lies
 * @param levelM - level of each cell [m]
 * @param share - part of each cell inside the plot [m²/m²]
 * @returns direction faced, clockwise from true north [°]; undefined on level ground
 */
export function facesDegOf(frame: GridFrame, levelM: Float64Array, share: Float64Array): number | undefined {
  const downhill = downhillGradients(frame, levelM, share)
  if (!downhill || Math.hypot(downhill.east, downhill.north) < LEVEL_GRADIENT) return undefined
  return wholeCircleDeg(toDegrees(Math.atan2(-downhill.east, -downhill.north)))
}

// Gradients of the plane nearest to the cells (least squares), from sums about the middle of the plot.
function downhillGradients(frame: GridFrame, levelM: Float64Array, share: Float64Array) {
  const middle = middleOf(frame, levelM, share)
  if (!middle) return undefined
  let [xx, xy, yy, xz, yz] = [0, 0, 0, 0, 0]
  for (let cell = 0; cell < share.length; cell++) {
    const weight = share[cell]!
    if (!(weight > 0)) continue
    const x = (cell % frame.columns) - middle.column
    const y = middle.row - Math.floor(cell / frame.columns)
    const z = levelM[cell]! - middle.levelM
    xx += weight * x * x
    xy += weight * x * y
    yy += weight * y * y
    xz += weight * x * z
    yz += weight * y * z
  }
  const determinant = xx * yy - xy * xy
  if (!(determinant > LINE_SHARE * (xx + yy) ** 2)) return undefined
  const perM = 1 / (determinant * frame.cellM)
  return { east: (xz * yy - yz * xy) * perM, north: (yz * xx - xz * xy) * perM }
}

function middleOf(frame: GridFrame, levelM: Float64Array, share: Float64Array) {
  let [total, column, row, level] = [0, 0, 0, 0]
  for (let cell = 0; cell < share.length; cell++) {
    const weight = share[cell]!
    if (!(weight > 0)) continue
    total += weight
    column += weight * (cell % frame.columns)
    row += weight * Math.floor(cell / frame.columns)
    level += weight * levelM[cell]!
  }
  return total > 0 ? { column: column / total, row: row / total, levelM: level / total } : undefined
}
