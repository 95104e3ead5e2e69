import type { Problem } from '#core/units'
import type { Plan } from './plan.schema'

/** A time zone that no clock is set by. */
export function timeZoneProblems({ site: { timeZone } }: Plan): Problem[] {
  if (timeZone === undefined || isTimeZone(timeZone)) return []
  return [
    {
      where: 'plan › site › timeZone',
      what: `“${timeZone}” is not a time zone.`,
      mend: 'Use a name such as Europe/London, or leave it out: times are then told by the sun.',
    },
  ]
}

// Offsets such as +01:00 are understood by clocks too, but know no summer time.
function isTimeZone(name: string): boolean {
  if (!/^[A-Za-z]/.test(name)) return false
  try {
    return new Intl.DateTimeFormat('en-GB', { timeZone: name }).resolvedOptions().timeZone !== ''
  } catch {
    return false
  }
}
