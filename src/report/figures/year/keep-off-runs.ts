import { daysInMonth } from '#core/units'
import { keepOffWords, monthRuns } from './job-words'
import type { MonthAxis } from './month-axis'
import type { YearZone } from './year-view.types'

/** A stretch of months when a zone is left alone, on the sheet. */
export interface KeepOffRun {
  readonly key: string
  readonly reason: YearZone['keepOff'][number]['reason']
  readonly words: string
  /** For runs too narrow to say it in full. */
  readonly short: string
  readonly leftPx: number
  readonly widthPx: number
}

const shortWords: Readonly<Record<KeepOffRun['reason'], string>> = {
  wet: 'too wet',
  birds: 'birds',
  frost: 'frost',
}

export function keepOffRuns(zone: YearZone, axis: MonthAxis): KeepOffRun[] {
  return zone.keepOff.flatMap(({ months, reason }) =>
    monthRuns(months).map(({ from, to }) => {
      const leftPx = axis.x(from, 0)
      return {
        key: `${zone.id}-${reason}-${from}`,
        reason,
        words: keepOffWords[reason],
        short: shortWords[reason],
        leftPx,
        widthPx: axis.x(to, daysInMonth[to]) - leftPx,
      }
    }),
  )
}
