import type { Job } from '#core/care'
import { eachMonth, type Month } from '#core/units'
import type { ZoneFacts } from '#core/zones'
import type { Findings, Plan } from '#plan'
import type { YearKind, YearView, YearZone } from './year-view.types'

/** Ground from here on, in a zone's steep part, counts as steep work [°]; the limit of CareYear.steepHoursByMonth. */
const STEEP_DEG = 15

/** What a drawing of the year shows of a plan and its findings. */
export function yearView(plan: Plan, findings: Findings, kind: YearKind = 'established'): YearView {
  const zones = findings.zoning.zones.map((facts) => zoneOf(facts, findings, kind))
  const hours = (month: Month, of: readonly YearZone[]) =>
    sum(of.flatMap(({ jobs }) => jobs.filter((job) => job.month === month)))
  const steep = zones.filter(({ slopeDegSteep }) => slopeDegSteep >= STEEP_DEG)
  const climate = findings.water.units[0]?.months
  return {
    kind,
    latitudeDeg: plan.site.latitudeDeg,
    zones,
    hoursByMonth: eachMonth((month) => hours(month, zones)),
    steepHoursByMonth: eachMonth((month) => hours(month, steep)),
    hoursTotal: zones.reduce((total, zone) => total + zone.hours, 0),
    hoursAvailable: plan.brief.hoursPerYear,
    rainMm: eachMonth((month) => plan.climate.months[month]?.rainMm ?? 0),
    dryingMm: eachMonth((month) => climate?.[month].referenceEtMm ?? 0),
  }
}

function zoneOf(facts: ZoneFacts, findings: Findings, kind: YearKind): YearZone {
  const { id, letter, name, spans, slopeDegSteep, lengthM } = facts
  const water = findings.water.units.find((unit) => unit.id === id)?.months
  const care = findings.care.zones.find(({ zoneId }) => zoneId === id)
  const jobs = (care?.jobs ?? []).filter(({ firstYearOnly }) => kind === 'first' || !firstYearOnly)
  return {
    ...{ id, letter, name, spans, slopeDegSteep, lengthM, jobs },
    fullness: eachMonth((month) => water?.[month].fullness ?? 0),
    dryDays: eachMonth((month) => water?.[month].dryDays ?? 0),
    wetDays: eachMonth((month) => water?.[month].wetDays ?? 0),
    keepOff: care?.keepOff ?? [],
    hours: sum(jobs),
  }
}

function sum(jobs: readonly Job[]): number {
  return jobs.reduce((total, { hours }) => total + hours, 0)
}
