import { dayOnGround, sunRatios, type DayOnGround } from '#core/shade'
import { representativeDays, ruralLinke } from '#core/sun'
import { daysInMonth, months, type Month } from '#core/units'
import { GROUND_ALBEDO, type Findings, type Plan } from '#plan'

/** What a person may ask of the sun's layers; midsummer, usual haze and grass where they say nothing. */
export interface SunOptions {
  /** Day of the year, 1 to 365. */
  readonly dayOfYear?: number
  /** Linke turbidity of the air [1], 1 to 8. */
  readonly linke?: number
  /** Share of light that the ground throws back, 0 to 1. */
  readonly albedo?: number
}

/** A plan and what follows from it. */
export interface Scene {
  readonly plan: Plan
  readonly findings: Findings
}

/** A layer of one clear day. */
export function dayLayer(
  pick: (day: DayOnGround) => Float32Array,
): (scene: Scene, options: SunOptions) => Float32Array {
  return (scene, options) => pick(dayOf(scene, options))
}

/** Radiation over open level ground in the month of the day asked for. */
export function sunRatioLayer({ plan, findings }: Scene, options: SunOptions): Float32Array {
  const month = monthOf(options.dayOfYear ?? midsummerDay(plan))
  return sunRatios(findings.sun, findings.terrain.slopeDeg)[month]
}

/** The representative day of the month with the longest days. */
function midsummerDay({ site }: Plan): number {
  return representativeDays[site.latitudeDeg < 0 ? 11 : 5]
}

function dayOf({ plan, findings }: Scene, options: SunOptions): DayOnGround {
  const { latitudeDeg, elevationM } = plan.site
  const dayOfYear = options.dayOfYear ?? midsummerDay(plan)
  const month = monthOf(dayOfYear)
  const shading = { ground: findings.surface, standing: findings.standing, far: plan.survey.skyline ?? [] }
  return dayOnGround(shading, findings.terrain, {
    latitudeDeg,
    elevationM,
    dayOfYear,
    linke: options.linke ?? ruralLinke(latitudeDeg)[month],
    albedo: options.albedo ?? GROUND_ALBEDO,
  })
}

/** Month of a day of a year without a leap day. */
function monthOf(dayOfYear: number): Month {
  let before = 0
  const found = months.find((month) => {
    before += daysInMonth[month]
    return dayOfYear <= before
  })
  if (found === undefined || dayOfYear < 1)
    throw new RangeError(`monthOf: the day of the year must be 1 to 365, got ${dayOfYear}`)
  return found
}
