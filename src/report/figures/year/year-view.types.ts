import type { Job, KeepOff } from '#core/care'
import type { Twelve } from '#core/units'
import type { Stretch } from '../../section-view.types'

/** Everything a drawing of the year shows, and nothing else. */
export interface YearView {
  /** An established year, or the year of planting with all that it adds. */
  readonly kind: YearKind
  readonly latitudeDeg: number
  readonly zones: readonly YearZone[]
  readonly hoursByMonth: Twelve<number>
  /** Part of the hours worked on steep ground [h]. */
  readonly steepHoursByMonth: Twelve<number>
  readonly hoursTotal: number
  /** Hours of care available [h a year]; undefined when not said. */
  readonly hoursAvailable: number | undefined
  readonly rainMm: Twelve<number>
  /** Reference evapotranspiration on level open ground [mm a month]. */
  readonly dryingMm: Twelve<number>
}

export type YearKind = 'established' | 'first'

export interface YearZone {
  readonly id: string
  readonly letter: string
  readonly name: string
  readonly spans: readonly Stretch[]
  readonly slopeDegSteep: number
  /** Length down the slope [m plan]. */
  readonly lengthM: number
  readonly fullness: Twelve<number>
  readonly dryDays: Twelve<number>
  readonly wetDays: Twelve<number>
  readonly jobs: readonly Job[]
  readonly keepOff: readonly KeepOff[]
  readonly hours: number
}
