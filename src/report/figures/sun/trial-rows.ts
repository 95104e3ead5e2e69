import type { LightClassName, ZoneSun } from '#core/shade'
import { monthNames, northernTwin, type Month } from '#core/units'
import { changeWords } from '../../words/change-classes'
import { hours, tenth } from '../../drawing/measures'
import type { TableTwin } from '../../figures/strips/table-twin.types'
import { lightWords } from '../../words/light-words'

/** A zone as a comparison knows it. */
interface ComparedZone {
  readonly id: string
  readonly letter: string
  readonly name: string
}

/** Two states of the sun, zone by zone. */
export interface TrialAsked {
  readonly zones: readonly ComparedZone[]
  readonly now: readonly ZoneSun[]
  readonly then: readonly ZoneSun[]
  /** What the trial is called. */
  readonly name: string
  readonly latitudeDeg: number
}

/** Hours of one season, now and with the trial [h]. */
export interface ComparedHours {
  readonly key: string
  readonly name: string
  readonly now: number
  readonly then: number
}

export interface TrialRow {
  readonly zone: ComparedZone
  readonly seasons: readonly ComparedHours[]
  readonly classNow: LightClassName
  readonly classThen: LightClassName
}

/** June, March and December of the north. */
const seasons = [
  { key: 'midsummer', month: 5 },
  { key: 'equinox', month: 2 },
  { key: 'midwinter', month: 11 },
] as const

/** Months of midsummer, equinox and midwinter in the plot's own half of the earth. */
export function steeringMonths(latitudeDeg: number): readonly { key: string; month: Month; name: string }[] {
  return seasons.map(({ key, month }) => {
    const own = northernTwin(month, latitudeDeg)
    return { key, month: own, name: `${key} (${monthNames[own]})` }
  })
}

/** Each zone in both states. */
export function trialRows({ zones, now, then, latitudeDeg }: TrialAsked): readonly TrialRow[] {
  return zones.flatMap((zone, at) => {
    const [before, after] = [now[at], then[at]]
    if (!before || !after) return []
    return [
      {
        zone,
        seasons: steeringMonths(latitudeDeg).map(({ key, month, name }) => ({
          ...{ key, name },
          now: before.sunHours[month],
          then: after.sunHours[month],
        })),
        classNow: before.lightClass,
        classThen: after.lightClass,
      },
    ]
  })
}

/** The comparison in figures. */
export function trialTable(asked: TrialAsked): TableTwin {
  return {
    caption: `Sun now, and after “${asked.name}”`,
    columns: ['Zone', ...steeringMonths(asked.latitudeDeg).map(({ name }) => name), 'Light class'],
    rows: trialRows(asked).map((row) => [
      `${row.zone.letter} ${row.zone.name}`,
      ...row.seasons.map(hoursChange),
      classChange(row),
    ]),
    note: 'Hours of direct sun on a clear day, means of the zones.',
  }
}

/** "8.4 h, then 9.1 h: +0.7 h". */
function hoursChange({ now, then }: ComparedHours): string {
  const gain = roundedGain(now, then)
  return gain === 0 ? `${hours(now)}, the same` : `${hours(now)}, then ${hours(then)}: ${changeWords(gain)}`
}

/** The change between figures as they are told, so that they agree [h]. */
export function roundedGain(now: number, then: number): number {
  return tenth(tenth(then) - tenth(now))
}

/** "shade, then part shade", or one class that stays. */
export function classChange({ classNow, classThen }: Pick<TrialRow, 'classNow' | 'classThen'>): string {
  return classNow === classThen
    ? `${lightWords[classNow]} as before`
    : `${lightWords[classNow]}, then ${lightWords[classThen]}`
}
