import type { SlopeBand } from './zone.types'

/** Steepest ground of each gradient class [°]; 10, 15 and 25 are the safety limits of mowing and working, the rest own judgement. */
export const GRADIENT_LIMITS_DEG = [5, 10, 15, 25, 35] as const

/** Limits of the classes of direct sun at midsummer [h]; above 6 h is full sun by common practice, 2 and 4 own judgement. */
export const SUN_HOUR_LIMITS = [2, 4, 6] as const

/** Limits of the classes of radiation over open level ground, growing season, per m² of plan [ratio]; own judgement. */
export const SUN_RATIO_LIMITS = [0.7, 0.9, 1.1] as const

/** A slope at least this long on plan is split into five bands, not three [m]; own judgement. */
const LONG_SLOPE_M = 30

/** Plots with less fall than this have no bands of position [m]; own judgement. */
export const LEAST_FALL_M = 0.5

/** Parts smaller than this share of the plot join a neighbour; own judgement. */
export const SMALLEST_SHARE = 0.05

/** Most zones that are suggested; own judgement: more than a household can look after differently. */
export const MOST_ZONES = 8

/** Differences that count as one step apart, and the number of steps below which two neighbours are alike; own judgement. */
export const STEPS = { position: 0.3, slopeDeg: 6, sunRatio: 0.15, sunHours: 2 } as const
export const ALIKE_STEPS = 0.6

/** While more zones than this stand, neighbours this many steps apart join too; own judgement: a household's fill. */
export const EASY_ZONES = 5
export const EASY_ALIKE_STEPS = 1.5

/** Cells this many cells or fewer from a drawn zone belong to it [cells]. */
export const REACH_CELLS = 2

/** Below this mean gradient a zone faces nowhere [m/m], some 0.3°; own judgement. */
export const LEVEL_GRADIENT = 0.005

/** One band: the lowest position that belongs to it, 0 (foot) to 1 (crest). */
export interface BandLimit {
  readonly band: SlopeBand
  readonly from: number
}

const threeBands: readonly BandLimit[] = [
  { band: 'upper', from: 2 / 3 },
  { band: 'mid', from: 1 / 3 },
  { band: 'foot', from: 0 },
]

const fiveBands: readonly BandLimit[] = [
  { band: 'crest', from: 0.8 },
  { band: 'upper', from: 0.6 },
  { band: 'mid', from: 0.4 },
  { band: 'lower', from: 0.2 },
  { band: 'foot', from: 0 },
]

const noBands: readonly BandLimit[] = [{ band: 'mid', from: 0 }]

/**
 * The bands into which a slope is divided.
 *
 * @param fallM - level difference of the plot [m], 0 or more
 * @param lengthM - plan length of its section [m], 0 or more
 * @returns bands from the top down: one on level ground, three on a short slope, five on a long one
 */
export function bandLimits(fallM: number, lengthM: number): readonly BandLimit[] {
  if (fallM < LEAST_FALL_M) return noBands
  return lengthM < LONG_SLOPE_M ? threeBands : fiveBands
}

/**
 * The band of a position.
 *
 * @param position - 0 (foot) to 1 (crest) [ratio]
 * @param limits - bands from the top down
 * @returns the band
 */
export function bandAt(position: number, limits: readonly BandLimit[]): SlopeBand {
  return limits.find((limit) => position >= limit.from)?.band ?? 'foot'
}
