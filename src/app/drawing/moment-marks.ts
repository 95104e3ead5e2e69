import { monthNames, months } from '#core/units'
import { dayOf, YEAR_DAYS } from './year-days'

/** A mark under a slider: from its one end to its other, 0 to 1. */
export interface SliderMark {
  readonly at: number
  readonly text: string
}

/** The months under the slider of the day, each where it begins. */
export const monthMarks: readonly SliderMark[] = months.map((month) => ({
  at: (dayOf(month, 1) - 1) / (YEAR_DAYS - 1),
  text: monthNames[month].slice(0, 3),
}))

/** Hours between the marks of a day [h]. */
const EVERY_H = 3

/** Whole hours under the slider of the time. */
export function dayMarks({ fromH, toH }: { readonly fromH: number; readonly toH: number }): SliderMark[] {
  const first = Math.ceil(fromH / EVERY_H)
  const count = Math.floor(toH / EVERY_H) - first + 1
  return Array.from({ length: Math.max(0, count) }, (_, index) => {
    const hour = (first + index) * EVERY_H
    return { at: (hour - fromH) / (toH - fromH), text: String(hour) }
  })
}
