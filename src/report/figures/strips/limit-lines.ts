import type { Axis } from '../../drawing/scale'
import { textWidthPx } from '../../drawing/text-width'
import { firstThatFits } from './fit-words'
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

/** Words over the profile take no more than this share of it. */
const INSIDE_SHARE = 0.34

/** Limits in order of steepness; words go right of the strip where there is room, else inside its flatter end. */
export function limitLines(
  view: StripView,
  axis: Axis,
  widthPx: number,
  y: (slopeDeg: number) => number,
): LimitLine[] {
  const machines = [...view.machines].sort((one, other) => one.limitDeg - other.limitDeg)
  const full = machines.map(({ name, limitDeg }) => `${name} ${Math.round(limitDeg)}°`)
  const roomPx = widthPx - axis.endPx - 10
  const outside = full.every((line) => textWidthPx(line, 'sans', TYPE_PX) <= roomPx)
  const words = outside ? full : machines.map((machine) => shorter(machine, axis.endPx - axis.startPx))
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

/** The whole name, its first two words, or the figure alone: the first that leaves the profile to be seen. */
function shorter({ name, limitDeg }: StripView['machines'][number], widthPx: number): string {
  const figure = `${Math.round(limitDeg)}°`
  const wordings = [`${name} ${figure}`, `${name.split(' ').slice(0, 2).join(' ')} ${figure}`]
  return firstThatFits(wordings, widthPx * INSIDE_SHARE, 'sans', TYPE_PX) ?? figure
}
