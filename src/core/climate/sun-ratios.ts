import { eachMonth, toRadians, type Month, type Twelve } from '#core/units'
import { withinRange, type SunOnGround } from '#core/sun'
import type { MonthClimate } from './climate.types'

/** What decides how much of level ground's radiation a slope gets under a real sky. */
export interface SkyOnSlope {
  /** Beam on the slope over beam on level ground [1]. */
  readonly beamRatio: number
  /** Diffuse share of the radiation on level ground, 0 to 1. */
  readonly diffuseShare: number
  /** Share of the sky that the slope sees, 0 to 1. */
  readonly skyView: number
  /** Share of light that the ground in front throws back, 0 to 1. */
  readonly albedo: number
}

/**
 * Radiation on the ground over radiation on open level ground under the month's usual sky, per m² of PLAN: 1 on open
 * level ground, and 1 where a month has no sun at all.
 *
 * @param sun - clear-sky sun on the same cells
 * @param year - the twelve months at the plot
 * @param slopeDeg - steepness of each cell [°], 0 to below 90
 * @param albedo - share of light that the ground throws back [1], 0 to 1
 * @returns ratio for each month [1], one value per cell; 0 outside the plot
 * @throws RangeError when the grids differ in size or the albedo is out of range
 * @see Liu & Jordan 1963, isotropic sky, as in Duffie & Beckman eq. 2.15.1; beam by the clear-sky model
 */
export function sunRatios(
  sun: SunOnGround,
  year: Twelve<MonthClimate>,
  slopeDeg: Float64Array,
  albedo: number,
): Twelve<Float32Array> {
  withinRange('sunRatios: albedo [1]', albedo, 0, 1)
  if (slopeDeg.length !== sun.skyView.length)
    throw new RangeError(`sunRatios: slopes must have ${sun.skyView.length} cells, got ${slopeDeg.length}`)
  const planShare = slopeDeg.map((deg) => Math.cos(toRadians(deg)))
  return eachMonth((month) => monthRatios(sun, year[month], { month, planShare, albedo }))
}

/**
 * Radiation on a slope over radiation on open level ground, per m² of slope.
 *
 * @param sky - beam ratio, diffuse share, share of sky and albedo [1]
 * @returns ratio [1]; exactly 1 where the beam ratio and the share of sky are 1
 * @see Liu & Jordan 1963, isotropic sky, as in Duffie & Beckman eq. 2.15.1
 */
export function realSkyRatio(sky: SkyOnSlope): number {
  const { beamRatio, diffuseShare, skyView, albedo } = sky
  return 1 + (1 - diffuseShare) * (beamRatio - 1) + (diffuseShare - albedo) * (skyView - 1)
}

interface Ground {
  readonly month: Month
  /** Plan area over slope area of each cell [1]. */
  readonly planShare: Float64Array
  readonly albedo: number
}

function monthRatios(
  sun: SunOnGround,
  { diffuseShare }: MonthClimate,
  { month, planShare, albedo }: Ground,
): Float32Array {
  const levelBeam = sun.openLevel[month].beamWhPerM2
  const beamWhPerM2 = sun.beamWhPerM2[month]
  const ratios = new Float32Array(planShare.length)
  for (let cell = 0; cell < ratios.length; cell += 1) {
    const skyView = sun.skyView[cell]!
    if (skyView === 0) continue
    if (levelBeam === 0) {
      ratios[cell] = 1
      continue
    }
    const beamRatio = beamWhPerM2[cell]! / levelBeam
    ratios[cell] = realSkyRatio({ beamRatio, diffuseShare, skyView, albedo }) / planShare[cell]!
  }
  return ratios
}
