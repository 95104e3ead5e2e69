import type { ZoneSun } from '#core/shade'
import { representativeDays } from '#core/sun'
import type { Month } from '#core/units'
import { textWidthPx } from '../../drawing/text-width'
import type { Clock } from '../../words/day-words'
import { wordOn } from '../../ramps'
import { hoursUp, shareColour, type HourSheet } from './hour-cells'

/** One hour of the picked month as a bar. */
export interface HourBar {
  readonly hour: number
  readonly leftPx: number
  readonly widthPx: number
  readonly topPx: number
  readonly tallPx: number
  readonly fill: string
  readonly ink: string
  readonly words: string
}

/** A time under the bars: by the sun, and by the clock where one is known. */
export interface HourMark {
  readonly hour: number
  readonly xPx: number
  readonly sun: string
  readonly clock: string | undefined
}

/** Height of a bar when the whole zone is in the sun, room over it, and the gap between bars [px]. */
export const BARS = { tallPx: 64, headPx: 18, gapPx: 2 } as const
const TYPE_PX = 11
/** Least distance of two times under the bars [px]. */
const MARK_PX = 42

/** The hours of one month as bars over the width of the chart. */
export function monthHours(
  { litShares }: Pick<ZoneSun, 'litShares'>,
  sheet: HourSheet,
  month: Month,
  clock: Clock | undefined,
): { readonly bars: readonly HourBar[]; readonly marks: readonly HourMark[] } {
  const hours = hoursUp(sheet.up[month])
  const [first = 12, last = 11] = [hours[0], hours.at(-1)]
  const eachPx = (sheet.rightPx - sheet.leftPx) / Math.max(1, last + 1 - first)
  const bars = hours.map((hour): HourBar => {
    const share = litShares[month][hour] ?? 0
    const fill = shareColour(share)
    const words = String(Math.round(share * 100))
    return {
      ...{ hour, fill, ink: wordOn(fill), leftPx: sheet.leftPx + (hour - first) * eachPx },
      widthPx: eachPx - BARS.gapPx,
      topPx: BARS.headPx + (1 - share) * BARS.tallPx,
      tallPx: share * BARS.tallPx,
      words: textWidthPx(words, 'sansBold', TYPE_PX) <= eachPx - 1 ? words : '',
    }
  })
  const every = [1, 2, 3, 6].find((step) => step * eachPx >= MARK_PX) ?? 6
  const edges = clock === undefined ? [last + 1] : []
  const marks = [...hours, ...edges]
    .filter((hour) => (hour - 12) % every === 0 && (clock === undefined || hour !== first))
    .map((hour) => ({
      hour,
      xPx: sheet.leftPx + (hour - first) * eachPx,
      sun: String(hour),
      clock: clock?.(hour, representativeDays[month]),
    }))
  return { bars, marks }
}
