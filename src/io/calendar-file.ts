/** One all-day entry of a calendar file. */
export interface CalendarEntry {
  /** Stays the same when the calendar is written again, so that entries are replaced, not doubled. */
  readonly uid: string
  readonly title: string
  readonly details: string
  /** First day, as year, month 1 to 12 and day. */
  readonly first: CalendarDay
  /** Last day, included. */
  readonly last: CalendarDay
  readonly yearly: boolean
}

export interface CalendarDay {
  readonly year: number
  readonly month: number
  readonly day: number
}

/** Longest line of a calendar file [octets], RFC 5545 section 3.1. */
const LINE_OCTETS = 75

/**
 * Writes entries as an iCalendar file (RFC 5545): all-day entries with no time zone, so that they stand on the same
 * day wherever they are opened.
 *
 * @param name - name of the calendar
 * @param entries - what to write
 * @param stamp - the day the calendar stands for; given, so that the same plan gives the same bytes
 * @returns the file's text
 */
export function writeCalendar(name: string, entries: readonly CalendarEntry[], stamp: CalendarDay): string {
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Lynchet//Care calendar//EN',
    'CALSCALE:GREGORIAN',
    `X-WR-CALNAME:${escaped(name)}`,
    ...entries.flatMap((entry) => entryLines(entry, stamp)),
    'END:VCALENDAR',
    '',
  ]
  return lines.map(folded).join('\r\n')
}

function entryLines(entry: CalendarEntry, stamp: CalendarDay): string[] {
  return [
    'BEGIN:VEVENT',
    `UID:${entry.uid}`,
    `DTSTAMP:${compact(stamp)}T000000Z`,
    `DTSTART;VALUE=DATE:${compact(entry.first)}`,
    `DTEND;VALUE=DATE:${compact(dayAfter(entry.last))}`,
    ...(entry.yearly ? ['RRULE:FREQ=YEARLY'] : []),
    `SUMMARY:${escaped(entry.title)}`,
    `DESCRIPTION:${escaped(entry.details)}`,
    'TRANSP:TRANSPARENT',
    'END:VEVENT',
  ]
}

const escaped = (text: string): string =>
  text.replace(/[\\;,]/g, (mark) => `\\${mark}`).replace(/\r?\n/g, '\\n')

const twoDigits = (value: number): string => String(value).padStart(2, '0')

const compact = ({ year, month, day }: CalendarDay): string => `${year}${twoDigits(month)}${twoDigits(day)}`

/** The end of an all-day entry is the first day that is free again. */
function dayAfter({ year, month, day }: CalendarDay): CalendarDay {
  const next = new Date(Date.UTC(year, month - 1, day + 1))
  return { year: next.getUTCFullYear(), month: next.getUTCMonth() + 1, day: next.getUTCDate() }
}

/** Breaks a line at 75 octets, never inside a character. */
function folded(line: string): string {
  const encoder = new TextEncoder()
  const pieces: string[] = []
  let piece = ''
  let octets = 0
  for (const character of line) {
    const size = encoder.encode(character).length
    const room = pieces.length > 0 ? LINE_OCTETS - 1 : LINE_OCTETS
    if (octets + size > room) {
      pieces.push(piece)
      piece = ''
      octets = 0
    }
    piece += character
    octets += size
  }
  return [...pieces, piece].join('\r\n ')
}
