import { sunBodies, type SunBodies } from '#io'
import { daysInMonth, months } from '#core/units'
import { withUnit } from '#report'
import type { Findings, Plan } from '#plan'
import { darkWords, seasonEnds } from './sun-words'
import { wrapped } from './text-layout'

type Zone = SunBodies['zones'][number]

/** Light class and hours of every zone, who takes most of its sun, and its winter; a line for each trial. */
export function sunLines(plan: Plan, findings: Findings): readonly string[] {
  const { zones, trials } = sunBodies(findings)
  return [
    ...zones.flatMap((zone) => zoneLines(zone, plan)),
    ...wrapped(
      `Hours of direct sun on a clear day, counted by the light that gets through. “lynchet sun” has every month${trials.length > 0 ? ', and the trials of the plan' : ''}.`,
    ),
  ]
}

function zoneLines({ letter, name, sun }: Zone, { site }: Plan): readonly string[] {
  const [midsummer, midwinter] = seasonEnds(site.latitudeDeg)
  const hours = `${withUnit(sun.sunHours[midsummer], 'h', 1)} at midsummer, ${withUnit(sun.sunHours[midwinter], 'h', 1)} at midwinter`
  return [
    `${letter}  ${name}: ${sun.className}`,
    ...wrapped(`${hours}.${takerWords(sun)} ${darkWords(sun.dark, 'Its middle')}`, '   '),
  ]
}

/** Hours a day that are worth naming whoever takes them [h]: a quarter of an hour. */
const WORTH_NAMING_H = 0.25

function takerWords({ account }: Zone['sun']): string {
  const taken = account.takers.map(({ name, hours }) => ({ name, meanH: meanOfYear(hours) }))
  const most = taken.reduce((one, other) => (other.meanH > one.meanH ? other : one))
  if (most.meanH < WORTH_NAMING_H) return ' Hardly anything is taken from it.'
  return ` Most is taken by ${most.name}, ${withUnit(most.meanH, 'h', 1)} a day over the year.`
}

function meanOfYear(hours: readonly number[]): number {
  const days = months.reduce<number>((sum, month) => sum + daysInMonth[month], 0)
  return months.reduce<number>((sum, month) => sum + daysInMonth[month] * (hours[month] ?? 0), 0) / days
}
