import type { ZoneSun } from '#core/shade'
import type { Month } from '#core/units'

/** Months that figures of sun are the mean of, and what they are called, such as "June" or "summer". */
export interface SunTime {
  readonly name: string
  readonly months: readonly Month[]
}

/** The account of one zone's sun. */
export interface TakersAsked {
  readonly zoneSun: ZoneSun
  readonly letter: string
  readonly name: string
  readonly time: SunTime
}
