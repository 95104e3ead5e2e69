import type { Month } from '#core/units'
import { COMPACT_PX } from '../../drawing/scale'
import { monthAxis, type MonthAxis } from './month-axis'

/** Room for the zones' names left of the months, and how wide the written month is. */
interface YearRoom {
  readonly fromPx: number
  readonly leftPx: number
  readonly wideTimes: { readonly ground: number; readonly jobs: number }
}

/** The widest that fits is taken [px]. */
const rooms: readonly YearRoom[] = [
  { fromPx: 1000, leftPx: 236, wideTimes: { ground: 2.6, jobs: 4.8 } },
  { fromPx: COMPACT_PX, leftPx: 168, wideTimes: { ground: 2, jobs: 4.6 } },
  { fromPx: 0, leftPx: 30, wideTimes: { ground: 1, jobs: 1 } },
]

/** The months across a sheet of a given width. */
export function yearAxis(widthPx: number, reading: 'ground' | 'jobs', month: Month | undefined): MonthAxis {
  const room = rooms.find(({ fromPx }) => widthPx >= fromPx)
  if (!room) throw new RangeError(`yearAxis: width must be positive, got ${widthPx}`)
  return monthAxis({ startPx: room.leftPx, endPx: widthPx - 4 }, month, room.wideTimes[reading])
}
