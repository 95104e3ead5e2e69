import type { ZoneSun } from '#core/shade'
import { monthNames, months, type Month } from '#core/units'
import type { TableTwin } from '../../figures/strips/table-twin.types'
import { hours } from '../../drawing/measures'
import { hourSheet, hoursUp } from './hour-cells'

/** A zone's sun by hour and month. */
export interface HoursAsked {
  readonly zoneSun: ZoneSun
  readonly letter: string
  readonly name: string
  readonly latitudeDeg: number
}

/** Width does not matter to the figures [px]. */
const ANY_PX = 600

/** Less sun through leaves is not told [h]. */
const LEAST_H = 0.05

/** Share of the zone in the sun for every hour by the sun and every month. */
export function dayByHourTable({ zoneSun, letter, name, latitudeDeg }: HoursAsked): TableTwin {
  const { firstHour, lastHour, up } = hourSheet(latitudeDeg, ANY_PX)
  const rows = Array.from({ length: lastHour - firstHour }, (_, at) => firstHour + at)
  return {
    caption: `Share of ${letter} ${name} in the sun, hour by hour`,
    columns: ['Hours by the sun', ...monthNames.map((month) => month.slice(0, 3))],
    rows: rows.map((hour) => [
      `${hour} to ${hour + 1}`,
      ...months.map((month) =>
        hoursUp(up[month]).includes(hour)
          ? `${Math.round((zoneSun.litShares[month][hour] ?? 0) * 100)} %`
          : 'sun down',
      ),
    ]),
    note: 'At the middle of each hour of a clear day; what comes through leaves counts in part.',
  }
}

/** The chart in a few words: hours of each month, and how much of them before noon. */
export function dayByHourWords({ zoneSun }: Pick<HoursAsked, 'zoneSun'>): string {
  return months
    .map(
      (month) =>
        `${monthNames[month]} ${hours(zoneSun.sunHours[month])}, of it ${hours(zoneSun.morningHours[month])} before noon`,
    )
    .join('; ')
}

/** A month's sun in words, the fullest first. */
export function monthWordings({ sunHours, morningHours, dappledHours }: ZoneSun, month: Month): string[] {
  const all = `${monthNames[month]}: ${hours(sunHours[month])}`
  const morning = `${all}, of it ${hours(morningHours[month])} before noon`
  const leafy =
    dappledHours[month] < LEAST_H ? [] : [`${morning}, ${hours(dappledHours[month])} partly through leaves`]
  return [...leafy, morning, all]
}
