import { sunEvents } from '#core/sun'

/** Where a clock hangs. */
export interface ClockSite {
  readonly latitudeDeg: number
  readonly longitudeDeg: number
  /** Time zone by its IANA name, such as Europe/London; no clock where it is left out. */
  readonly timeZone?: string | undefined
}

/** Year whose rules of daylight time are read when none is given; the sun's own time differs by seconds from year to year. */
const CLOCK_YEAR = 2026

const MINUTE_MS = 60_000
const HOUR_MS = 3_600_000
const DAY_MS = 86_400_000
/** Turn of the earth [°/h]. */
const TURN_DEG_PER_H = 15
/** The hour by the sun at which it is highest [h]. */
const NOON_H = 12
const DAY_H = 24
/** Times that a guess of the offset from world time is bettered [count]: twice is enough on either side of a change. */
const ROUNDS = 3

/**
 * What the clocks of a place show at a time by the sun.
 *
 * @param solarHour - time by the sun [h], 12 when it is highest
 * @param dayOfYear - day of a year without a leap day [d], 1 to 365
 * @param site - place and time zone
 * @param year - calendar year [1]
 * @returns hours and minutes such as 13:07, rounded to the minute; undefined where the site has no time zone
 * @throws RangeError when the time or the day is not one, or the time zone is not known
 * @see NREL SPA and USNO transit times hold the difference between sun and clock
 */
export function clockOf(
  solarHour: number,
  dayOfYear: number,
  site: ClockSite,
  year = CLOCK_YEAR,
): string | undefined {
  if (!Number.isFinite(solarHour))
    throw new RangeError(`clockOf: the time by the sun [h] must be finite, got ${solarHour}`)
  const { timeZone } = site
  if (timeZone === undefined) return undefined
  const ms = noonMs(site, timeZone, { year, dayOfYear }) + (solarHour - NOON_H) * HOUR_MS
  return new Date(wallMs(Math.round(ms / MINUTE_MS) * MINUTE_MS, timeZone)).toISOString().slice(11, 16)
}

/**
 * The time by the sun when the clocks of a place show a time.
 *
 * @param clock - hours and minutes, 00:00 to 24:00
 * @param dayOfYear - day of a year without a leap day [d], 1 to 365
 * @param site - place and time zone
 * @param year - calendar year [1]
 * @returns time by the sun [h], 0 to below 24; undefined where the site has no time zone, or the clocks skip that time
 * @throws RangeError when the time or the day is not one, or the time zone is not known
 */
export function solarHourOf(
  clock: string,
  dayOfYear: number,
  site: ClockSite,
  year = CLOCK_YEAR,
): number | undefined {
  const shownMs = timeOfDayMs(clock)
  const { timeZone } = site
  if (timeZone === undefined) return undefined
  const date = { year, dayOfYear }
  const wantedMs = midnightMs(date) + shownMs
  let ms = wantedMs
  for (let round = 0; round < ROUNDS; round += 1) ms += wantedMs - wallMs(ms, timeZone)
  if (wallMs(ms, timeZone) !== wantedMs) return undefined
  const hour = NOON_H + (ms - noonMs(site, timeZone, date)) / HOUR_MS
  return ((hour % DAY_H) + DAY_H) % DAY_H
}

/** A day of a calendar year. */
interface YearDay {
  readonly year: number
  readonly dayOfYear: number
}

// The sun's noon on the date that the calendar of the place shows: west of the date line it may be a day off the sun's own.
function noonMs(site: ClockSite, timeZone: string, date: YearDay): number {
  const midnight = midnightMs(date)
  const guess = midnight + (NOON_H - site.longitudeDeg / TURN_DEG_PER_H) * HOUR_MS
  const transit = transitMs(guess, site)
  const daysOff = Math.floor(wallMs(transit, timeZone) / DAY_MS) - midnight / DAY_MS
  return daysOff === 0 ? transit : transitMs(guess - daysOff * DAY_MS, site)
}

const transitMs = (ms: number, { latitudeDeg, longitudeDeg }: ClockSite): number =>
  sunEvents(new Date(ms), latitudeDeg, longitudeDeg).noon.valueOf()

/** The start of a date, as if its calendar were that of world time [ms]; 29 February is not counted. */
function midnightMs({ year, dayOfYear }: YearDay): number {
  if (!Number.isInteger(dayOfYear) || dayOfYear < 1 || dayOfYear > 365)
    throw new RangeError(
      `clock: the day of the year [d] must be a whole number from 1 to 365, got ${dayOfYear}`,
    )
  // 1970 has no leap day: month and date are read there.
  const counted = new Date((dayOfYear - 1) * DAY_MS)
  return Date.UTC(year, counted.getUTCMonth(), counted.getUTCDate())
}

function timeOfDayMs(clock: string): number {
  const [, hours = '', minutes = ''] = /^(\d{1,2}):([0-5]\d)$/.exec(clock) ?? []
  const ms = Number(hours) * HOUR_MS + Number(minutes) * MINUTE_MS
  if (hours === '' || ms > DAY_MS)
    throw new RangeError(`clock: a time must be hours and minutes from 00:00 to 24:00, got ${clock}`)
  return ms
}

/** What calendar and clock of the place show at an instant, as if it were world time [ms]. */
function wallMs(ms: number, timeZone: string): number {
  const parts = formatOf(timeZone).formatToParts(ms)
  const part = (type: Intl.DateTimeFormatPartTypes) => Number(parts.find((one) => one.type === type)?.value)
  const thousandths = ((ms % 1000) + 1000) % 1000
  return (
    Date.UTC(part('year'), part('month') - 1, part('day'), part('hour'), part('minute'), part('second')) +
    thousandths
  )
}

// A format costs far more to make than to use.
const formats = new Map<string, Intl.DateTimeFormat>()

function formatOf(timeZone: string): Intl.DateTimeFormat {
  const known = formats.get(timeZone) ?? newFormat(timeZone)
  formats.set(timeZone, known)
  return known
}

function newFormat(timeZone: string): Intl.DateTimeFormat {
  return new Intl.DateTimeFormat('en-GB', {
    timeZone,
    calendar: 'gregory',
    numberingSystem: 'latn',
    hourCycle: 'h23',
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
    second: '2-digit',
  })
}
