import { monthNames, windName, type Month } from '#core/units'
import type { ZoneFacts } from '#core/zones'
import type { Findings, Plan, ZoneFindings } from '#plan'
import { counted, grouped, listed, money, withUnit } from './figures-in-words'
import type { Answer, Phrase } from './phrase'

/** Less fall than this is level ground [m]; own judgement, what a line level still shows. */
const LEVEL_FALL_M = 0.05

/** Answers the first question: what is this ground? */
export function groundAnswer({ surface, terrain, zoning, sights, accuracy }: Findings): Answer {
  const steepest = terrain.section.stations.reduce((most, one) => (one.slopeDeg > most.slopeDeg ? one : most))
  const planM2 = sum(zoning.zones, (zone) => zone.planAreaM2)
  const slopeM2 = sum(zoning.zones, (zone) => zone.slopeAreaM2)
  const facing = surface.facesDeg === undefined ? '.' : `, facing ${windName(surface.facesDeg)}.`
  const level: readonly Phrase[] = ['This ground is level: there is no slope to plan for.']
  const sloping: readonly Phrase[] = [
    'It falls ',
    { figure: withUnit(surface.fallM, 'm', 1) },
    ' in ',
    { figure: withUnit(terrain.section.lengthM, 'm', 0) },
    facing,
    ' Steepest ',
    { figure: withUnit(steepest.slopeDeg, '°', 0) },
    giveOrTake(accuracy.slopeSdDeg[steepest.cell] ?? 0),
    `, ${withUnit(steepest.distanceM, 'm', 0)} from the top.`,
  ]
  return {
    says: surface.fallM < LEVEL_FALL_M ? level : sloping,
    note: [
      `${withUnit(planM2, 'm²', 0)} on plan, `,
      { figure: withUnit(slopeM2, 'm²', 0) },
      ` on the slope: order plants for the slope. ${counted(zoning.zones.length, 'zone')}${zoning.suggested ? ' suggested' : ' drawn by you'}.${sights.map(sightWords).join('')}`,
    ],
  }
}

/** The standard error of a slope; nothing where it is less than half a degree. */
function giveOrTake(slopeSdDeg: number): string {
  return slopeSdDeg < 0.5 ? '' : ` give or take ${withUnit(slopeSdDeg, '°', 0)}`
}

function sightWords({ name, fromWall, hidden }: Findings['sights'][number]): string {
  const [first] = hidden
  return first
    ? ` From the ${fromWall ? 'door of the ' : ''}${name.toLowerCase()} the ground from ${withUnit(first.fromM, 'm', 0)} to ${withUnit(first.toM, 'm', 0)} is out of sight.`
    : ''
}

/** Where does the water go? */
export function waterAnswer({ water, zoning }: Findings): Answer {
  const days = water.units.map((unit) => ({
    zone: zoneOf(zoning.zones, unit.id),
    dry: sum(unit.months, (month) => month.dryDays),
    wet: sum(unit.months, (month) => month.wetDays),
  }))
  const [first] = days
  if (!first) return { says: ['No zone to follow the water through.'], note: [] }
  const driest = days.reduce((most, one) => (one.dry > most.dry ? one : most), first)
  const wettest = days.reduce((most, one) => (one.wet > most.wet ? one : most), first)
  const rain = water.account.lines.find(({ id }) => id === 'rain')?.amount ?? 0
  const away = water.account.lines.find(({ id }) => id === 'runoff')?.amount ?? 0
  return {
    says: [
      'Of ',
      { figure: withUnit(rain, 'm³', 0), ask: { zoneId: undefined, about: 'water' } },
      ' of rain a year, ',
      { figure: withUnit(Math.abs(away), 'm³'), ask: { zoneId: undefined, about: 'water' } },
      ' leaves over the surface.',
    ],
    note: [
      ...dayPhrases(driest.zone, driest.dry, 'too dry for plants'),
      ' ',
      ...dayPhrases(wettest.zone, wettest.wet, 'wetter than it can hold'),
      ' Ground without a chosen cover is taken as meadow.',
    ],
  }
}

function dayPhrases(zone: ZoneFacts | undefined, days: number, how: string): Phrase[] {
  if (!zone) return []
  if (Math.round(days) === 0) return [`No zone is ${how}.`]
  return [
    `${zone.letter} is ${how} `,
    { figure: counted(Math.round(days), 'day'), ask: { zoneId: zone.id, about: 'water' } },
    ' a year.',
  ]
}

/** What may I mow? */
export function mowAnswer({ zoning, zones, care }: Findings): Answer {
  const area = (meant: (cover: ZoneFindings['cover']) => boolean) =>
    sum(
      zones.filter(({ cover }) => meant(cover)),
      ({ zoneId }) => zoneOf(zoning.zones, zoneId)?.slopeAreaM2 ?? 0,
    )
  const all = sum(zoning.zones, (zone) => zone.slopeAreaM2)
  const off = area(({ machines }) => machines.every(({ allowed }) => !allowed))
  return {
    says: [
      'Mow ',
      {
        figure: withUnit(
          area(({ mowing }) => mowing === 'mow' || mowing === 'mow-on-foot'),
          'm²',
          0,
        ),
      },
      ` of ${withUnit(all, 'm²', 0)}.`,
      ...(off > 0
        ? [' Keep every machine off ', { figure: withUnit(off, 'm²', 0) }, '.']
        : [' No part is too steep for all of your machines.']),
    ],
    note: [
      'Care as proposed: ',
      { figure: withUnit(care.hoursTotal, 'h'), ask: { zoneId: undefined, about: 'hours' } },
      ' a year. Measured on the slope.',
    ],
  }
}

/** What holds this bank? */
export function holdAnswer({ zones }: Findings): Answer {
  const planted = zones.filter(({ planting }) => planting.mix.some(({ count }) => count > 0))
  const count = sum(planted, ({ planting }) => sum(planting.mix, (line) => line.count))
  const kinds = new Set(planted.flatMap(({ planting }) => planting.mix.map(({ plantId }) => plantId))).size
  const months = planted.flatMap(({ planting }) => (planting.monthsToCover ? [planting.monthsToCover] : []))
  if (count === 0) return { says: ['Nothing to plant yet: no zone is set to be planted.'], note: [] }
  const slowest = months.reduce((most, one) => (one.to > most.to ? one : most), { from: 0, to: 0 })
  return {
    says: [
      { figure: counted(count, 'plant') },
      ` of ${counted(kinds, 'kind')}. Four fifths of the ground is covered in `,
      { figure: `${grouped(slowest.from)} to ${withUnit(slowest.to, 'months', 0)}` },
      '.',
    ],
    note: [
      'Evergreen ground cover first, then shrubs, trees only where they fit. Until it closes, keep the soil under mulch or matting. Roots help against wash and shallow slips, not against a bank that moves: then ask a geotechnical engineer.',
    ],
  }
}

/** What happens this month? */
export function monthAnswer(plan: Plan, { care, zoning }: Findings, month: Month): Answer {
  const hours = care.hoursByMonth[month]
  const off = care.zones
    .filter(({ keepOff }) => keepOff.some(({ months, reason }) => reason === 'wet' && months.includes(month)))
    .map(({ zoneId }) => zoneOf(zoning.zones, zoneId)?.letter ?? '')
  const cost = care.costMinor === undefined ? '' : `, ${money(care.costMinor, plan.brief.currency)} a year`
  return {
    says: [
      `${monthNames[month]} asks for `,
      { figure: withUnit(hours, 'h'), ask: { zoneId: undefined, about: 'hours' } },
      off.length > 0 ? `. Keep off ${listed(off)}: too wet.` : '.',
    ],
    note: [
      `${withUnit(care.hoursTotal, 'h')} in an established year${cost}. The slope is counted in.${firstYear(care)}`,
    ],
  }
}

function firstYear({ zones }: Findings['care']): string {
  const hours = sum(zones, ({ firstYearHours }) => firstYearHours)
  return hours > 0
    ? ` The year of planting asks for ${withUnit(hours, 'h')} more: plant one face at a time.`
    : ''
}

/** What do I hand over? */
export function handoverAnswer({ toSettle }: Findings): Answer {
  const dangers = toSettle.filter(({ kind }) => kind === 'danger').length
  return {
    says: ['A report to print, a calendar of the year, and the plan itself.'],
    note: [
      dangers > 0
        ? `${counted(dangers, 'danger')} still ${dangers === 1 ? 'stands' : 'stand'} on the list: settle ${dangers === 1 ? 'it' : 'them'} first, or hand ${dangers === 1 ? 'it' : 'them'} over in words.`
        : 'No danger stands on the list.',
    ],
  }
}

function zoneOf(zones: readonly ZoneFacts[], id: string): ZoneFacts | undefined {
  return zones.find((zone) => zone.id === id)
}

function sum<T>(rows: readonly T[], amount: (row: T) => number): number {
  return rows.reduce((total, row) => total + amount(row), 0)
}
