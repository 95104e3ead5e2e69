import { clockOf, timeZoneProblems, type Plan } from '#plan'
import type { Clock } from './day-words'

/**
 * The clock of a plot.
 *
 * @param plan - the plan
 * @returns tells the clock from the time by the sun; undefined where no time zone is given or it is not one
 */
export function planClock(plan: Plan): Clock | undefined {
  const { site } = plan
  if (site.timeZone === undefined || timeZoneProblems(plan).length > 0) return undefined
  return (solarHour, dayOfYear) => clockOf(solarHour, dayOfYear, site)
}
