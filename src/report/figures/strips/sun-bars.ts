import { monthNames, months, type Month } from '#core/units'
import { n } from '../../drawing/path'
import { wordOn } from '../../ramps'
import { sunColour } from './matrix-cells'
import type { StripView, StripZone } from './strip-view.types'

/** A month of a zone: hours before noon below, after noon on top, through leaves beside. */
export interface SunBar {
  readonly month: Month
  readonly short: string
  readonly leftPx: number
  readonly widthPx: number
  readonly topPx: number
  readonly tallPx: number
  /** Where noon lies in the bar [px]. */
  readonly noonPx: number
  /** Height of the mark of light through leaves, from the foot up [px]. */
  readonly leavesPx: number
  readonly fill: string
  readonly ink: string
  readonly words: string
}

/** Room for the name on top, months below and air at the sides [px]. */
const ROOM_PX = { top: 26, bottom: 18, side: 2 } as const

/** Bars of a zone at one scale of hours, and the line of open level ground. */
export function sunBars(
  view: StripView,
  zone: StripZone,
  { widthPx, heightPx }: { widthPx: number; heightPx: number },
) {
  const most = Math.max(1, ...view.openSunHours)
  const basePx = heightPx - ROOM_PX.bottom
  const tall = (hours: number) => (hours / most) * (basePx - ROOM_PX.top)
  const columnPx = (widthPx - ROOM_PX.side * 2) / 12
  const left = (month: Month) => ROOM_PX.side + month * columnPx
  const bars = months.map((month): SunBar => {
    const hours = zone.sunHours[month]
    const fill = sunColour(hours)
    return {
      ...{ month, fill, ink: wordOn(fill), short: monthNames[month].slice(0, 1) },
      ...{ leftPx: left(month) + 1, widthPx: columnPx - 2, topPx: basePx - tall(hours), tallPx: tall(hours) },
      noonPx: basePx - tall(Math.min(hours, zone.morningHours[month])),
      leavesPx: tall(Math.min(hours, zone.dappledHours[month])),
      words: String(Math.round(hours)),
    }
  })
  const open = months
    .map((month) => {
      const top = n(basePx - tall(view.openSunHours[month]))
      return `${month === 0 ? `M${n(left(month))} ${top}` : `V${top}`}H${n(left(month) + columnPx)}`
    })
    .join('')
  return { bars, basePx, columnPx, open }
}
