import type { Month } from '#core/units'
import { hours } from '../../drawing/measures'
import type { MonthAxis } from './month-axis'
import type { YearView } from './year-view.types'

/** Hours of a month as a bar [px from the chart's top]. */
export interface MonthBar {
  readonly month: Month
  readonly hours: number
  readonly leftPx: number
  readonly widthPx: number
  readonly topPx: number
  readonly tallPx: number
  /** Part worked on steep ground, drawn at the top of the bar. */
  readonly steepPx: number
  readonly words: string
  /** The figure alone, where months are narrow. */
  readonly short: string
}

/** Kept free above the highest bar for its figure [px]. */
const HEAD_PX = 18
const BAR_PX = 38

/** Twelve bars at one scale, and the line of the hours there are: a twelfth of the year's. */
export function monthBars(view: YearView, axis: MonthAxis, heightPx: number) {
  const have = (view.hoursAvailable ?? 0) / 12
  const most = Math.max(0.5, have, ...view.hoursByMonth)
  const tall = (time: number) => (time / most) * (heightPx - HEAD_PX)
  const bars = axis.columns.map(({ month, leftPx, widthPx }): MonthBar => {
    const time = view.hoursByMonth[month]
    const wide = Math.min(BAR_PX, widthPx * 0.72)
    const asidePx = month === axis.wide ? 10 : (widthPx - wide) / 2
    return {
      ...{ month, hours: time, leftPx: leftPx + asidePx, widthPx: wide },
      topPx: heightPx - tall(time),
      tallPx: tall(time),
      steepPx: tall(view.steepHoursByMonth[month]),
      words: time === 0 ? '0 h' : hours(time),
      short: time > 0 ? String(Math.round(time * 10) / 10) : '',
    }
  })
  return { bars, have, haveYPx: view.hoursAvailable === undefined ? undefined : heightPx - tall(have) }
}

const ROW_PX = 15
/** Places of letter, figure and bar in the wide month [px from its left]. */
const PLACES = { letter: 64, figure: 120, bar: 128 } as const
const LEAST_ROOM_PX = 190

/** Hours of the wide month zone by zone, the longest first; as many as there is room for. */
export function zoneHours(view: YearView, axis: MonthAxis, heightPx: number) {
  const column = axis.columns.find(({ month }) => month === axis.wide)
  if (!column || column.widthPx < LEAST_ROOM_PX) return []
  const rows = view.zones
    .map((zone) => ({
      zone,
      time: zone.jobs.reduce((sum, job) => sum + (job.month === column.month ? job.hours : 0), 0),
    }))
    .filter(({ time }) => time > 0)
    .sort((one, other) => other.time - one.time)
    .slice(0, Math.floor((heightPx - 4) / ROW_PX))
  const most = Math.max(...rows.map(({ time }) => time))
  return rows.map(({ zone, time }, at) => ({
    key: zone.id,
    letter: zone.letter,
    words: hours(time),
    letterPx: column.leftPx + PLACES.letter,
    figurePx: column.leftPx + PLACES.figure,
    leftPx: column.leftPx + PLACES.bar,
    widthPx: (time / most) * (column.widthPx - PLACES.bar - 12),
    yPx: heightPx - (rows.length - at) * ROW_PX,
  }))
}
