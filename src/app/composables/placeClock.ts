import { clockOf, type Plan } from '#plan'

/** What the clocks at a place show at a time by the sun; or why they are not known. */
export interface PlaceClock {
  readonly at: (hourBySun: number, dayOfYear: number) => string | undefined
  readonly known: boolean
  /** Why there is no clock, where a time zone is given but not understood. */
  readonly trouble: string
}

/** The clock of a plot, by its time zone. */
export function placeClock(site: Plan['site']): PlaceClock {
  if (site.timeZone === undefined) return { at: () => undefined, known: false, trouble: '' }
  if (!isKnown(site.timeZone))
    return {
      at: () => undefined,
      known: false,
      trouble: `The time zone ${site.timeZone} is not known here, so times are told by the sun only.`,
    }
  return { at: (hourBySun, dayOfYear) => clockOf(hourBySun, dayOfYear, site), known: true, trouble: '' }
}

function isKnown(timeZone: string): boolean {
  try {
    new Intl.DateTimeFormat('en-GB', { timeZone })
    return true
  } catch {
    return false
  }
}
