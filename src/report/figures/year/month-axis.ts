import { daysInMonth, months, type Month } from '#core/units'

/** Months across the sheet; one of them may be wide, to be written out. */
export interface MonthAxis {
  readonly startPx: number
  readonly endPx: number
  readonly wide: Month | undefined
  readonly columns: readonly MonthColumn[]
  /** Place of a day [px]: 0 is the start of the month's first day. */
  readonly x: (month: Month, day: number) => number
  /** Time of a place, in months from the start of the year, 0 to 12. */
  readonly timeAt: (xPx: number) => number
}

interface MonthColumn {
  readonly month: Month
  readonly leftPx: number
  readonly widthPx: number
}

/** Lays twelve months between two places; the wide one is so many times as wide as the others. */
export function monthAxis(
  room: { readonly startPx: number; readonly endPx: number },
  wide?: Month,
  times = 1,
): MonthAxis {
  const isWide = wide !== undefined && times > 1
  const unitPx = (room.endPx - room.startPx) / (isWide ? 11 + times : 12)
  let leftPx = room.startPx
  const columns = months.map((month) => {
    const column = { month, leftPx, widthPx: unitPx * (isWide && month === wide ? times : 1) }
    leftPx += column.widthPx
    return column
  })
  const at = (month: Month) => columns[month] ?? { month, leftPx: room.startPx, widthPx: unitPx }
  return {
    ...room,
    wide: isWide ? wide : undefined,
    columns,
    x: (month, day) => at(month).leftPx + (day / daysInMonth[month]) * at(month).widthPx,
    timeAt: (xPx) => {
      const column = columns.find(({ leftPx: left, widthPx }) => xPx < left + widthPx) ?? at(11)
      return Math.min(12, Math.max(0, column.month + (xPx - column.leftPx) / column.widthPx))
    },
  }
}
