import type { Account, Month, Twelve } from '#core/units'
import type { MonthNormals } from '#core/climate'
import type { CoverKind, ZoneCover } from '#core/cover'

/** Plants to set in the first year, by layer of the mix; sown ground has none. */
interface PlantCounts {
  readonly ground: number
  readonly shrub: number
  readonly tree: number
}

/** What the care stage needs to know of a zone. */
export interface CareFacts {
  readonly zoneId: string
  readonly letter: string
  readonly name: string
  readonly slopeDegMean: number
  /** Nine tenths of the zone are no steeper [°]. */
  readonly slopeDegSteep: number
  readonly slopeAreaM2: number
  /** Length of the zone's outline [m]. */
  readonly edgeM: number
  /** Days of each month with the root zone above field capacity [d]. */
  readonly wetDays: Twelve<number>
  readonly plants: PlantCounts
  /** What the zone can carry and what stands on it. */
  readonly cover: ZoneCover
}

/** What the person said, and the climate, as far as care goes. */
export interface CareBrief {
  /** Cost of an hour, in integer minor units; undefined when not said. */
  readonly ratePerHourMinor: number | undefined
  /** Place whose law counts, such as "Germany"; undefined when not said. */
  readonly legalRegion: string | undefined
  /** Twelve months of normals, January first. */
  readonly months: readonly MonthNormals[]
}

/** Kinds of work, as drawn: disc mow, triangle cut and rake, cross weed, ringed dot plant, half-disc rake, diamond look. */
export type JobMark = 'mow' | 'cut' | 'weed' | 'plant' | 'rake' | 'look'

/** One job in one zone in one month of one year of care. */
export interface Job {
  readonly id: string
  readonly zoneId: string
  readonly operation: string
  readonly mark: JobMark
  readonly what: string
  readonly how: string
  readonly month: Month
  /** First and last good day of the month, 1 to 31. */
  readonly fromDay: number
  readonly toDay: number
  readonly times: number
  readonly hours: number
  /** Part of the hours that the slope adds [h]. */
  readonly slopeHours: number
  /** Happens only in the year of planting. */
  readonly firstYearOnly: boolean
  readonly because: string
  readonly source: string
}

/** Time when a zone is better left alone. */
export interface KeepOff {
  readonly zoneId: string
  readonly months: readonly Month[]
  readonly reason: 'wet' | 'birds' | 'frost'
  readonly text: string
  readonly source: string
}

export interface ZoneCare {
  readonly zoneId: string
  readonly cover: CoverKind
  readonly jobs: readonly Job[]
  readonly keepOff: readonly KeepOff[]
  /** Hours of an established year, slope counted in; books job by job [h a year]. */
  readonly account: Account
  /** Extra hours of the first year [h]. */
  readonly firstYearHours: number
  /** The same zone as mown, meadow and ground cover, to compare; refused ones say why. */
  readonly compared: readonly ComparedCover[]
}

export interface ComparedCover {
  readonly cover: CoverKind
  /** Hours of an established year; undefined when refused [h a year]. */
  readonly hours: number | undefined
  readonly refusal: string | undefined
  readonly costMinor: number | undefined
}

export interface CareYear {
  readonly zones: readonly ZoneCare[]
  /** Hours of an established year by month [h]. */
  readonly hoursByMonth: Twelve<number>
  /** Hours of an established year [h a year]. */
  readonly hoursTotal: number
  /** Part of the month's hours worked on steep ground, 15° and more in its steep part [h]. */
  readonly steepHoursByMonth: Twelve<number>
  /** Cost of the year in integer minor units of the plan's currency; undefined without a rate. */
  readonly costMinor: number | undefined
}
