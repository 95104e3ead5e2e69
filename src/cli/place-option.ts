import type { PlanPoint } from '#core/geometry'
import type { Problem } from '#core/units'

/**
 * The place that --at gives.
 *
 * @param text - EAST,NORTH in plot metres
 * @returns the place; undefined when the text gives none
 */
export function placeOf(text: string | undefined): PlanPoint | undefined {
  const [eastM, northM, ...more] = (text ?? '')
    .split(',')
    .map((part) => (part.trim() === '' ? NaN : Number(part)))
  if (eastM === undefined || northM === undefined || more.length > 0) return undefined
  return Number.isFinite(eastM) && Number.isFinite(northM) ? { eastM, northM } : undefined
}

/** What is said of a place that is not on the plot. */
export function offThePlot({ eastM, northM }: PlanPoint): Problem {
  return {
    where: '--at',
    what: `East ${eastM}, north ${northM} lies off the plot.`,
    mend: 'Give metres east and north of the plot’s origin, inside the boundary.',
  }
}
