import type { Outcome, Problem } from '#core/units'
import geomagnetism from 'geomagnetism'

/** What a compass needs to be corrected. */
export interface Declination {
  /** Magnetic north from true north, east positive [°]. */
  readonly declinationDeg: number
  /** The model it came from. */
  readonly model: string
}

const MODEL = 'WMM2025'
/** Days that the model holds for, as its file says: five years from 13 November 2024. */
const FIRST_DAY = '2024-11-13'
const LAST_DAY = '2029-11-12'
/** Weakest level part of the field that a compass can be trusted in [nT]: the blackout zone of the model's report. */
const BLACKOUT_NT = 2000
/** Heights that the model holds for [m]. */
const LOWEST_M = -1000
const HIGHEST_M = 850_000

/**
 * Magnetic declination by the World Magnetic Model 2025.
 *
 * @param latitudeDeg - latitude [°], north positive, -90 to 90
 * @param longitudeDeg - longitude [°], east positive, -180 to 180
 * @param elevationM - height above the sea [m], -1000 to 850,000
 * @param on - day of the bearing, such as "2026-03-21", from 2024-11-13 to 2029-11-12
 * @returns declination and model, or why there is none
 */
export function declinationAt(
  latitudeDeg: number,
  longitudeDeg: number,
  elevationM: number,
  on: string,
): Outcome<Declination> {
  const day = dayOf(on)
  const problems = [
    ...placeProblems(latitudeDeg, longitudeDeg, elevationM),
    ...(day === undefined ? [noDay(on)] : dayProblems(on)),
  ]
  if (day === undefined || problems.length > 0) return { ok: false, problems }
  const field = geomagnetism.model(day).point([latitudeDeg, longitudeDeg, elevationM / 1000])
  if (!(field.h >= BLACKOUT_NT)) return { ok: false, problems: [nearPole(field.h)] }
  return { ok: true, value: { declinationDeg: field.decl, model: MODEL } }
}

/** Midday of a day that exists. */
function dayOf(on: string): Date | undefined {
  if (!/^\d{4}-\d\d-\d\d$/.test(on)) return undefined
  const day = new Date(`${on}T12:00:00Z`)
  return Number.isNaN(day.getTime()) || !day.toISOString().startsWith(on) ? undefined : day
}

function placeProblems(latitudeDeg: number, longitudeDeg: number, elevationM: number): Problem[] {
  const rows = [
    { where: 'latitude', value: latitudeDeg, least: -90, most: 90, unit: '°' },
    { where: 'longitude', value: longitudeDeg, least: -180, most: 180, unit: '°' },
    { where: 'height above the sea', value: elevationM, least: LOWEST_M, most: HIGHEST_M, unit: ' m' },
  ]
  return rows.flatMap(({ where, value, least, most, unit }) =>
    value >= least && value <= most
      ? []
      : [{ where, what: `${value}${unit} is no such thing.`, mend: `Give ${least} to ${most}${unit}.` }],
  )
}

const noDay = (on: string): Problem => ({
  where: 'day of the bearing',
  what: `“${on}” is not a day.`,
  mend: 'Write it as 2026-03-21.',
})

function dayProblems(on: string): Problem[] {
  if (on >= FIRST_DAY && on <= LAST_DAY) return []
  return [
    {
      where: 'day of the bearing',
      what: `The magnetic field of ${on} is not known here: the model holds from ${FIRST_DAY} to ${LAST_DAY}.`,
      mend: 'Take the declination from a map of that year and give the true bearing yourself.',
    },
  ]
}

const nearPole = (horizontalNt: number): Problem => ({
  where: 'compass',
  what: `So near a magnetic pole (${Math.round(horizontalNt)} nT along the ground) no compass can be trusted.`,
  mend: 'Find the direction by the sun, by two points on a map or with a satellite receiver.',
})
