import { ramps } from '../ramps'
import { withUnit } from './figures-in-words'

/** Lower limits of the classes of change in hours of sun, the middle one as good as none [h a day]. */
export const CHANGE_LIMITS_H = [-Infinity, -2, -1, -0.25, 0.25, 1, 2] as const

/** Class of a change in hours of sun, 0 for the greatest loss to 6 for the greatest gain. */
function changeClass(hours: number): number {
  return CHANGE_LIMITS_H.findLastIndex((limit) => hours >= limit)
}

/** Colour of a change; it always goes with its sign. */
export function changeColour(hours: number): string {
  return ramps.change[changeClass(hours)] ?? ramps.change[3]
}

/** A change with its sign, to a tenth of an hour. */
export function changeWords(hours: number): string {
  const words = withUnit(Math.abs(hours), 'h', 1)
  if (Math.abs(hours) < 0.05) return `±${withUnit(0, 'h', 1)}`
  return `${hours > 0 ? '+' : '−'}${words}`
}

/** What each class of change is called. */
export const changeNames: readonly string[] = [
  'loses 2 h or more',
  'loses 1 to 2 h',
  'loses up to 1 h',
  'as good as unchanged',
  'gains up to 1 h',
  'gains 1 to 2 h',
  'gains 2 h or more',
]
