import { book, eachMonth, monthNames, type Account, type AccountLine, type Month } from '#core/units'
import { refusalOf, workLimit, type CoverKind } from '#core/cover'
import type { CareBrief, CareFacts, CareYear, ComparedCover, Job, ZoneCare } from './care.types'
import type { CareTables } from './care.schema'
import { jobsOf, type CareCase } from './jobs'
import { keepOffOf, seasonsOf } from './seasons'

/**
 * A year of care for all zones: every job with its month and hours, what it costs, when to keep off, and what the same
 * ground would ask as lawn, meadow or ground cover.
 *
 * @param zones - the zones' facts, each with what stands on it
 * @param tables - operations, windows, machines and limits
 * @param brief - rate, law and climate
 * @param latitudeDeg - latitude [°], north positive, -90 to 90
 * @returns the year; hours and costs are those of an established year
 * @throws RangeError when the latitude, a slope, an area or a table is out of range
 */
export function careYear(
  zones: readonly CareFacts[],
  tables: CareTables,
  brief: CareBrief,
  latitudeDeg: number,
): CareYear {
  if (!(Math.abs(latitudeDeg) <= 90))
    throw new RangeError(`careYear: latitudeDeg must be -90 to 90, got ${latitudeDeg}`)
  const cared = zones.map((zone) => {
    mustBeSound(zone)
    return zoneCare({ zone, brief, tables, seasons: seasonsOf(zone, brief, tables.windows, latitudeDeg) })
  })
  const steepDeg = workLimit('steep-work', tables.cover).value
  const steepIds = new Set(zones.filter((zone) => zone.slopeDegSteep >= steepDeg).map(({ zoneId }) => zoneId))
  const lasting = cared.flatMap(({ jobs }) => jobs).filter(({ firstYearOnly }) => !firstYearOnly)
  const hoursTotal = cared.reduce((sum, { account }) => sum + account.total, 0)
  return {
    zones: cared,
    hoursByMonth: eachMonth((month) => hoursIn(lasting, month)),
    hoursTotal,
    steepHoursByMonth: eachMonth((month) =>
      hoursIn(
        lasting.filter(({ zoneId }) => steepIds.has(zoneId)),
        month,
      ),
    ),
    costMinor: costOf(hoursTotal, brief),
  }
}

/**
 * The jobs of one month, over all zones, as a month's sheet or a calendar shows them.
 *
 * @param year - a year of care
 * @param month - month of the year, 0 (January) to 11
 * @returns its jobs by first day; first-year jobs included
 */
export function jobsInMonth(year: CareYear, month: Month): Job[] {
  return year.zones
    .flatMap(({ jobs }) => jobs)
    .filter((job) => job.month === month)
    .sort((one, other) => one.fromDay - other.fromDay)
}

/** What a zone is compared as. */
const comparedKinds: readonly CoverKind[] = ['mown', 'meadow', 'ground-cover']

function zoneCare(given: CareCase): ZoneCare {
  const { zone, tables, seasons } = given
  const cover = zone.cover.chosen
  const refusal = refusalIn(zone, cover)
  // A refused cover is not worked: only looking, from where a person may stand, is left.
  const jobs = refusal ? jobsOf('leave', given, ({ mark }) => mark === 'look') : jobsOf(cover, given)
  return {
    zoneId: zone.zoneId,
    cover,
    jobs,
    keepOff: keepOffOf(zone.zoneId, cover, seasons, tables),
    account: hoursAccount(zone, jobs, refusal),
    firstYearHours: jobs
      .filter(({ firstYearOnly }) => firstYearOnly)
      .reduce((sum, { hours }) => sum + hours, 0),
    compared: comparedKinds.map((kind) => comparedAs(kind, given)),
  }
}

function refusalIn(zone: CareFacts, kind: CoverKind): string | undefined {
  const option = zone.cover.options.find((one) => one.kind === kind)
  if (!option) throw new RangeError(`careYear: cover options must hold ${kind}, got none`)
  return refusalOf(option)
}

function hoursAccount(zone: CareFacts, jobs: readonly Job[], refusal: string | undefined): Account {
  const refused: AccountLine[] = refusal
    ? [{ id: 'refused', amount: 0, because: `No hours counted: ${refusal}`, source: 'yours' }]
    : []
  const lines = jobs.filter(({ firstYearOnly }) => !firstYearOnly).map(lineOf)
  return book(`Care of zone ${zone.letter}`, 'h a year', [...refused, ...lines])
}

function lineOf(job: Job): AccountLine {
  const often = job.times === 1 ? 'once' : `${job.times} times`
  const slope = job.slopeHours > 0 ? `, of which the slope adds ${job.slopeHours.toFixed(2)} h` : ''
  return {
    id: job.id,
    amount: job.hours,
    because: `${job.what}, ${monthNames[job.month]}, ${often}: ${job.hours.toFixed(2)} h${slope}. ${job.because}`,
    source: job.source,
  }
}

function comparedAs(kind: CoverKind, given: CareCase): ComparedCover {
  const refusal = refusalIn(given.zone, kind)
  if (refusal) return { cover: kind, hours: undefined, refusal, costMinor: undefined }
  const hours = jobsOf(kind, given, ({ firstYearOnly }) => !firstYearOnly).reduce(
    (sum, job) => sum + job.hours,
    0,
  )
  return { cover: kind, hours, refusal: undefined, costMinor: costOf(hours, given.brief) }
}

const hoursIn = (jobs: readonly Job[], month: Month): number =>
  jobs.filter((job) => job.month === month).reduce((sum, { hours }) => sum + hours, 0)

const costOf = (hours: number, { ratePerHourMinor }: CareBrief): number | undefined =>
  ratePerHourMinor === undefined ? undefined : Math.round(hours * ratePerHourMinor)

function mustBeSound(zone: CareFacts): void {
  const sizes = { slopeAreaM2: zone.slopeAreaM2, edgeM: zone.edgeM, ...zone.plants }
  for (const [name, value] of Object.entries(sizes))
    if (!(Number.isFinite(value) && value >= 0))
      throw new RangeError(`careYear: ${name} must be 0 or more, got ${value}`)
}
