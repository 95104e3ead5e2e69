import { eachMonth, toRadians, type Twelve } from '#core/units'
import type { SunOnGround } from './shade.types'

/**
 * Radiation on the ground over radiation on open level ground under the month's usual sky, per m² of PLAN: 1 on open
 * level ground, and 1 where a month has no light at all.
 *
 * @param sun - sun on the cells
 * @param slopeDeg - steepness of each cell [°], 0 to below 90
 * @returns ratio for each month [1], one value per cell; 0 outside the plot
 * @throws RangeError when the grids differ in size
 */
export function sunRatios(sun: SunOnGround, slopeDeg: Float64Array): Twelve<Float32Array> {
  if (slopeDeg.length !== sun.skyView.length)
    throw new RangeError(`sunRatios: slopes must have ${sun.skyView.length} cells, got ${slopeDeg.length}`)
  return eachMonth((month) => {
    const levelWh = sun.openLevel[month].usualWhPerM2
    return sun.usualWhPerM2[month].map((wh, cell) => {
      if (sun.skyView[cell] === 0) return 0
      return levelWh === 0 ? 1 : wh / levelWh / Math.cos(toRadians(slopeDeg[cell]!))
    })
  })
}
