import type { Plant } from './plant.schema'
import type { Site } from './plants.types'
import { GAP_RADIUS_RATIO, staggeredCover } from './spacing'

/** Time as on paper, and the most it is stretched by weeds and weather on good ground [ratio; common practice]. */
const GOOD_GROUND = { from: 1, to: 1.5 } as const

/** The same on poor ground: subsoil, drought, thin or very steep soil [ratio; common practice]. */
const POOR_GROUND = { from: 1.5, to: 2 } as const

/** Least and most stretch of time [ratio]. */
export interface Stretch {
  readonly from: number
  readonly to: number
}

/** Ground counts as poor when drier [moisture class], shallower [m] or steeper [°] than this [own judgement]. */
const POOR_MOISTURE = 3
const POOR_DEPTH_M = 0.2
const POOR_SLOPE_DEG = 35

/** Growth of the first year over that of a later one: roots come first [common practice]. */
const FIRST_YEAR_GROWTH = 0.5

/** Roots that send up new shoots away from the clump: such plants go on closing after they reach their width. */
const runners: readonly Plant['rootHabit'][number][] = [
  'rhizome-running',
  'stolon',
  'node-rooting',
  'suckering',
]

/** Cover of a sown sward at the end of each year from sowing [m²/m²; own judgement]. */
const SWARD_COVER = [0, 0.6, 0.82, 0.9, 0.95, 0.95] as const

/**
 * How much longer than on paper plants take to close on a site.
 *
 * @param site - what the zone offers
 * @returns least and most stretch of time [ratio], 1 or more
 */
export function timeStretch(site: Pick<Site, 'moistureClass' | 'soilDepthM' | 'slopeDeg'>): Stretch {
  const poor =
    site.moistureClass < POOR_MOISTURE || site.soilDepthM < POOR_DEPTH_M || site.slopeDeg > POOR_SLOPE_DEG
  return poor ? POOR_GROUND : GOOD_GROUND
}

/**
 * Years of full growth until the last gap between staggered plants closes: the middle of the gap lies 0.577
 * spacings away.
 *
 * @param plant - spacing [m], radius as planted [m] and advance of its edge [m/a]
 * @returns growing years [a], 0 or more; undefined when it stands still or stays narrower than the gap
 */
export function yearsToClose(plant: Plant): number | undefined {
  const missingM = plant.spacingM * GAP_RADIUS_RATIO - plant.unitRadiusM
  if (missingM <= 0) return 0
  const reaches = runs(plant) || plant.spreadM / 2 >= plant.spacingM * GAP_RADIUS_RATIO
  return plant.spreadMPerYear > 0 && reaches ? missingM / plant.spreadMPerYear : undefined
}

/**
 * Share of its ground that a plant covers some time after planting or sowing.
 *
 * @param plant - the plant, at its advised spacing
 * @param years - time since planting in autumn or spring [a], 0 or more
 * @param stretch - how much longer than on paper everything takes [ratio], 1 or more
 * @param sown - true for seed of a sward
 * @returns covered share, 0 to 1 [m²/m²]; always 0 for annuals, which leave the ground bare
 */
export function coverAfter(plant: Plant, years: number, stretch: number, sown: boolean): number {
  if (plant.lifeForm === 'annual') return 0
  const paperYears = years / stretch
  if (sown) return swardCover(paperYears)
  const grownYears = paperYears <= 1 ? paperYears * FIRST_YEAR_GROWTH : FIRST_YEAR_GROWTH + (paperYears - 1)
  const grownM = plant.unitRadiusM + plant.spreadMPerYear * grownYears
  const radiusM = runs(plant) ? grownM : Math.min(grownM, Math.max(plant.spreadM / 2, plant.unitRadiusM))
  return staggeredCover(radiusM, plant.spacingM)
}

function runs(plant: Plant): boolean {
  return plant.rootHabit.some((habit) => runners.includes(habit))
}

function swardCover(years: number): number {
  const last = SWARD_COVER.length - 1
  const whole = Math.min(last, Math.floor(years))
  const here = SWARD_COVER[whole] ?? 0
  const next = SWARD_COVER[Math.min(last, whole + 1)] ?? here
  return here + (next - here) * Math.min(1, years - whole)
}
