import type { Axis } from '../../drawing/axis'
import { hours } from '../../drawing/measures'
import { textWidthPx } from '../../drawing/text-width'
import type { StripView } from './strip-view.types'
import { zoneStretches } from './zone-cells'

/** Hours of a zone as a bar, its slope share on top, the same zone mown as an outline. */
export interface HoursBar {
  readonly key: string
  readonly leftPx: number
  readonly widthPx: number
  readonly bar: { readonly topPx: number; readonly tallPx: number }
  readonly slope: { readonly topPx: number; readonly tallPx: number }
  readonly mownTopPx: number | undefined
  readonly figure: string | undefined
  readonly aside: string | undefined
  readonly textPx: { readonly xPx: number; readonly yPx: number }
}

/** Kept free above the bars for their figures [px]. */
const HEAD_PX = 14
const TYPE_PX = 12

/** Bars over the zones, all at one scale of hours; a zone in several stretches has its bar on the widest. */
export function hoursBars(view: StripView, axis: Axis, heightPx: number): HoursBar[] {
  const most = Math.max(0.1, ...view.zones.map(({ care }) => Math.max(care.hours, care.mownHours ?? 0)))
  const tall = (time: number) => (time / most) * (heightPx - HEAD_PX)
  return zoneStretches(view, axis)
    .filter(({ main }) => main)
    .map(({ key, zone, leftPx, widthPx, middlePx }) => {
      const { care } = zone
      const tops = [care.hours, care.mownHours ?? 0].map((time) => heightPx - tall(time))
      const words = wordsFor(care, widthPx)
      return {
        ...{ key, leftPx: leftPx + 3, widthPx: Math.max(1, widthPx - 6), ...words },
        bar: { topPx: heightPx - tall(care.hours), tallPx: tall(care.hours) },
        slope: { topPx: heightPx - tall(care.hours), tallPx: tall(care.slopeHours) },
        mownTopPx: care.mownHours === undefined ? undefined : heightPx - tall(care.mownHours),
        textPx: { xPx: middlePx, yPx: Math.min(...tops) - 4 },
      }
    })
}

function wordsFor(care: StripView['zones'][number]['care'], widthPx: number) {
  const figure = hours(care.hours)
  const asides = care.mownHours === undefined ? ['no mowing', ''] : [`mown ${hours(care.mownHours)}`, '']
  const wide = (aside: string) =>
    textWidthPx(figure, 'sansBold', TYPE_PX) + (aside ? textWidthPx(` ${aside}`, 'sans', TYPE_PX) : 0)
  const aside = asides.find((words) => wide(words) <= widthPx)
  return { figure: aside === undefined ? undefined : figure, aside: aside || undefined }
}
