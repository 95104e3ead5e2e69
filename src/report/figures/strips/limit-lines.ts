import type { Axis } from '../../drawing/scale'
import { textWidthPx } from '../../drawing/text-width'
import { slopeAt } from './gradient-marks'
import type { StripView } from './strip-view.types'

/** A machine's limit across the strip, with its words. */
export interface LimitLine {
  readonly key: string
  readonly yPx: number
  readonly words: string
  readonly at: { readonly xPx: number; readonly yPx: number; readonly anchor: 'start' | 'end' }
}

/** Words stand this far apart at least [px], at this type size. */
const APART_PX = 12
const TYPE_PX = 11

/** Limits in order of steepness; words go right of the strip where there is room, else inside its flatter end. */
export function limitLines(
  view: StripView,
  axis: Axis,
  widthPx: number,
  y: (slopeDeg: number) => number,
): LimitLine[] {
  const machines = [...view.machines].sort((one, other) => one.limitDeg - other.limitDeg)
  const words = machines.map(({ name, limitDeg }) => `${name} ${Math.round(limitDeg)}°`)
  const roomPx = widthPx - axis.endPx - 10
  const outside = words.every((line) => textWidthPx(line, 'sans', TYPE_PX) <= roomPx)
  const flatLeft = slopeAt(view.stations, view.lengthM * 0.08) <= slopeAt(view.stations, view.lengthM * 0.92)
  let freeBelowPx = Infinity
  return machines.map((machine, at) => {
    const yPx = y(machine.limitDeg)
    const textPx = Math.min(yPx + (outside ? 4 : -3), freeBelowPx - APART_PX)
    freeBelowPx = textPx
    return {
      key: machine.name,
      yPx,
      words: words[at] ?? '',
      at: outside
        ? { xPx: axis.endPx + 6, yPx: textPx, anchor: 'start' }
        : flatLeft
          ? { xPx: axis.startPx + 5, yPx: textPx, anchor: 'start' }
          : { xPx: axis.endPx - 5, yPx: textPx, anchor: 'end' },
    }
  })
}
