import type { ZoningInput } from './zoning-input.types'
import type { CellSun } from './cell-sun'
import { GRADIENT_LIMITS_DEG, SUN_HOUR_LIMITS, SUN_RATIO_LIMITS, type BandLimit } from './limits'

/** Slopes are compared with the limits to this precision [°], so that rounding errors cannot split a plane. */
const SLOPE_PRECISION_DEG = 0.01
/** The same for positions and ratios. */
const RATIO_PRECISION = 0.0001

/**
 * Sorts cells by band of position, class of gradient and class of sun.
 *
 * @param input - ground, terrain and sun
 * @param sun - midsummer hours and season ratio of each cell
 * @param bands - bands of position, from the top down
 * @returns a class number for each cell, alike for cells that behave alike; -1 outside the plot
 */
export function classesOfCells(input: ZoningInput, sun: CellSun, bands: readonly BandLimit[]): Int32Array {
  const { slopeDeg, position } = input.terrain
  const { share } = input.surface
  const classes = new Int32Array(share.length).fill(-1)
  for (let cell = 0; cell < share.length; cell++) {
    if (!((share[cell] ?? 0) > 0)) continue
    const band = bandOf(rounded(position[cell] ?? 0, RATIO_PRECISION), bands)
    const gradient = classOf(rounded(slopeDeg[cell] ?? 0, SLOPE_PRECISION_DEG), GRADIENT_LIMITS_DEG)
    const hours = classOf(rounded(sun.midsummerHours[cell] ?? 0, SLOPE_PRECISION_DEG), SUN_HOUR_LIMITS)
    const ratio = classOf(rounded(sun.seasonRatio[cell] ?? 0, RATIO_PRECISION), SUN_RATIO_LIMITS)
    classes[cell] = ((band * 10 + gradient) * 10 + hours) * 10 + ratio
  }
  return classes
}

const rounded = (value: number, precision: number) => Math.round(value / precision) * precision

// Place of the first band, from the top down, that the position reaches; the last takes whatever is lower.
function bandOf(position: number, bands: readonly BandLimit[]): number {
  let band = 0
  while (band < bands.length - 1 && position < (bands[band]?.from ?? 0)) band++
  return band
}

// How many of the limits the value passes.
function classOf(value: number, limits: readonly number[]): number {
  let passed = 0
  for (const limit of limits) if (value > limit + Number.EPSILON * limit) passed++
  return passed
}
