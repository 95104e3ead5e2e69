import type { Job, KeepOff } from '#core/care'
import { daysInMonth, monthNames, type Month } from '#core/units'
import type { ZoneFacts } from '#core/zones'
import type { Findings, Plan } from '#plan'
import { writeCalendar, type CalendarEntry } from './calendar-file'

/**
 * A year of care for a calendar program: each job as an all-day stretch from its first to its last good day, and the
 * months when a zone is better left alone. Lasting jobs come back every year; those of the first year do not.
 *
 * @param plan - the plan
 * @param findings - what follows from it
 * @param year - the year to begin with, 1970 to 9999
 * @returns iCalendar text; written again, its entries replace the older ones
 * @throws RangeError when the year is out of range
 */
export function careCalendar(plan: Plan, findings: Findings, year: number): string {
  if (!(Number.isInteger(year) && year >= 1970 && year <= 9999))
    throw new RangeError(`careCalendar: year must be a whole number of 1970 to 9999, got ${year}`)
  const book = { of: bookName(plan), year }
  const entries = findings.care.zones.flatMap(({ zoneId, jobs, keepOff }) => {
    const zone = findings.zoning.zones.find(({ id }) => id === zoneId)
    if (!zone) return []
    return [
      ...jobs.map((job) => jobEntry(job, zone, book)),
      ...keepOff.flatMap((off) =>
        stretches(off.months).map((stretch) => offEntry(off, zone, { stretch, book })),
      ),
    ]
  })
  return writeCalendar(plan.name, entries, { year, month: 1, day: 1 })
}

interface Book {
  /** Says whose entries they are, so that two plans do not overwrite each other. */
  readonly of: string
  readonly year: number
}

function bookName({ name, site }: Plan): string {
  const plain = name
    .toLowerCase()
    .replace(/[^\p{L}\d]+/gu, '-')
    .replace(/^-|-$/g, '')
  return `${plain}.${site.latitudeDeg.toFixed(4)}.${site.longitudeDeg.toFixed(4)}.lynchet`
}

function jobEntry(job: Job, zone: ZoneFacts, { of, year }: Book): CalendarEntry {
  const month = job.month + 1
  const often = job.times > 1 ? `, ${job.times} times` : ''
  return {
    uid: `${job.id}@${of}`,
    title: `${zone.letter}: ${job.what}${often} (${job.hours.toFixed(1)} h)`,
    details: `${zone.letter}, ${zone.name}. ${job.how} ${job.because}${job.firstYearOnly ? ' In the year of planting only.' : ''}`,
    first: { year, month, day: job.fromDay },
    last: { year, month, day: job.toDay },
    yearly: !job.firstYearOnly,
  }
}

interface Stretch {
  readonly from: Month
  readonly to: Month
}

/** Months in a row, each row as one stretch; a winter is cut at New Year. */
function stretches(months: readonly Month[]): Stretch[] {
  return [...months]
    .sort((one, other) => one - other)
    .reduce<Stretch[]>((sofar, month) => {
      const last = sofar.at(-1)
      return last && last.to + 1 === month
        ? [...sofar.slice(0, -1), { from: last.from, to: month }]
        : [...sofar, { from: month, to: month }]
    }, [])
}

function offEntry(
  off: KeepOff,
  zone: ZoneFacts,
  { stretch: { from, to }, book: { of, year } }: { readonly stretch: Stretch; readonly book: Book },
): CalendarEntry {
  return {
    uid: `${zone.id}/keep-off/${off.reason}/${monthNames[from].toLowerCase()}@${of}`,
    title: `${zone.letter}: better left alone (${off.reason})`,
    details: `${zone.letter}, ${zone.name}. ${off.text}`,
    first: { year, month: from + 1, day: 1 },
    last: { year, month: to + 1, day: daysInMonth[to] },
    yearly: true,
  }
}
