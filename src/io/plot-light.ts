import { climateYear } from '#core/climate'
import { dayOnGround, standingOf, usualDayOnGround, type DayOnGround, type Shading } from '#core/shade'
import { representativeDays } from '#core/sun'
import type { Surface } from '#core/survey'
import type { GroundFacts } from '#core/terrain'
import { daysInMonth, months, northernTwin, type Month } from '#core/units'
import { GROUND_ALBEDO, sunSite, usualSky, type Plan } from '#plan'
import { loadShadeTables } from './shade-tables'

/** How a day's sun is reckoned; midsummer under the usual sky, all shadows thrown, where a person says nothing. */
export interface SunDayOptions {
  /** Day of a year without a leap day, 1 to 365. */
  readonly dayOfYear?: number
  /** The usual sky of the month from the plan's climate, or a clear one. */
  readonly sky?: 'usual' | 'clear'
  /** Linke turbidity of a clear sky [1], 1 to 8. */
  readonly linke?: number
  /** Share of light that the ground throws back, 0 to 1. */
  readonly albedo?: number
  /** Longest time step [h], 0.01 to 2. */
  readonly stepHours?: number
  /** Whether anything throws its shadow. */
  readonly castShadows?: boolean
  /** Whether the skyline narrows the light from the sky, besides the cell's own tilt. */
  readonly skyline?: boolean
}

/** What takes the light of a plot, and a day of it. */
export interface PlotLight {
  /** Everything that can take the sun away. */
  readonly shading: () => Shading
  /** Sun of one day; the day asked for last is kept. */
  readonly day: (options: SunDayOptions) => DayOnGround
}

/**
 * The light on a plot, worked out when it is asked for.
 *
 * @param plan - the plan
 * @param surface - its surface
 * @param facts - facts of its ground
 * @returns what shades it, and its days
 */
export function plotLight(plan: Plan, surface: Surface, facts: GroundFacts): PlotLight {
  const { obstacles, skyline } = plan.survey
  let shading: Shading | undefined
  const shadingMade = () =>
    (shading ??= {
      ground: surface,
      standing: standingOf(obstacles, surface, loadShadeTables(), plan.site.latitudeDeg),
      far: skyline ?? [],
    })
  let kept: { readonly key: string; readonly day: DayOnGround } | undefined
  return {
    shading: shadingMade,
    day: (options) => {
      const key = JSON.stringify(askedOf(plan, options))
      if (kept?.key !== key) kept = { key, day: dayOf(plan, { shading: shadingMade(), facts }, options) }
      return kept.day
    },
  }
}

/** The day that counts: that asked for, or the representative day of the month with the longest days. */
export function dayAsked({ site }: Plan, { dayOfYear }: SunDayOptions): number {
  return dayOfYear ?? representativeDays[northernTwin(NORTHERN_MIDSUMMER, site.latitudeDeg)]
}

/** Midsummer's month in the north: June. */
const NORTHERN_MIDSUMMER: Month = 5

/**
 * Month of a day of a year without a leap day.
 *
 * @param dayOfYear - 1 to 365
 * @returns the month
 * @throws RangeError when the day is not in the year
 */
export function monthOf(dayOfYear: number): Month {
  let before = 0
  const found = months.find((month) => {
    before += daysInMonth[month]
    return dayOfYear <= before
  })
  if (found === undefined || dayOfYear < 1)
    throw new RangeError(`monthOf: the day of the year must be 1 to 365, got ${dayOfYear}`)
  return found
}

function askedOf(plan: Plan, options: SunDayOptions) {
  const { sky = 'usual', castShadows = true, skyline = true, linke, albedo, stepHours } = options
  return { dayOfYear: dayAsked(plan, options), sky, castShadows, skyline, linke, albedo, stepHours }
}

interface Lit {
  readonly shading: Shading
  readonly facts: GroundFacts
}

function dayOf(plan: Plan, { shading, facts }: Lit, options: SunDayOptions): DayOnGround {
  const { dayOfYear, sky, castShadows, skyline, stepHours } = askedOf(plan, options)
  const { linke, ...site } = sunSite(plan)
  const month = monthOf(dayOfYear)
  const choice = {
    ...site,
    dayOfYear,
    castShadows,
    skyline,
    linke: options.linke ?? (typeof linke === 'number' ? linke : linke[month]),
    albedo: options.albedo ?? GROUND_ALBEDO,
    ...(stepHours === undefined ? {} : { stepHours }),
  }
  const cells = facts.steepness()
  if (sky === 'clear') return dayOnGround(shading, cells, choice)
  return usualDayOnGround(shading, cells, choice, usualSky(climateYear(plan.climate, plan.site))[month])
}
