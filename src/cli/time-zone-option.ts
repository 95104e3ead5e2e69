import { timeZoneProblems, type Plan } from '#plan'
import type { Arguments } from './arguments'
import { UsageError } from './exit'

/**
 * A plan whose clocks are those of --time-zone.
 *
 * @param plan - the plan
 * @param given - the command line
 * @returns the plan with the time zone; the same plan when none was given
 */
export function withTimeZone(plan: Plan, given: Arguments): Plan {
  const timeZone = given.text('time-zone')
  if (timeZone === undefined) return plan
  const placed = { ...plan, site: { ...plan.site, timeZone } }
  const [problem] = timeZoneProblems(placed)
  if (problem) throw new UsageError(`--time-zone: ${problem.what} ${problem.mend}`)
  return placed
}
