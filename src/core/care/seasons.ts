import { daysInMonth, months, northernTwin, type Month } from '#core/units'
import type { CareBrief, CareFacts, KeepOff } from './care.types'
import type { CareTables, CareWindows } from './care.schema'

/** Months in which a zone may or may not be worked. */
export interface Seasons {
  readonly latitudeDeg: number
  /** Warm enough for grass to grow. */
  readonly growing: readonly Month[]
  readonly wet: readonly Month[]
  readonly frost: readonly Month[]
  readonly birds: readonly Month[]
  readonly nesting: NestingRow
  /** Days of each month too wet to work [d]. */
  readonly wetDays: CareFacts['wetDays']
}

type NestingRow = CareWindows['nesting'][number]

/** A stretch of one real month. */
export interface Window {
  readonly month: Month
  readonly fromDay: number
  readonly toDay: number
}

/**
 * When a zone grows, and when it is better left alone.
 *
 * @param zone - the zone's facts
 * @param brief - climate and law
 * @param windows - data/care/windows.json
 * @param latitudeDeg - latitude [°], north positive, -90 to 90
 * @returns the months of each season
 * @throws RangeError when there are not twelve months of normals or the table lacks a row
 */
export function seasonsOf(
  zone: CareFacts,
  brief: CareBrief,
  windows: CareWindows,
  latitudeDeg: number,
): Seasons {
  if (brief.months.length !== months.length)
    throw new RangeError(`careYear: months must hold 12 normals, got ${brief.months.length}`)
  const growingC = windowLimit('growing', windows).value
  const nesting = nestingOf(brief.legalRegion, windows)
  return {
    latitudeDeg,
    growing: monthsWhere(brief, ({ tMinC, tMaxC }) => (tMinC + tMaxC) / 2 > growingC),
    frost: monthsWhere(brief, ({ tMinC }) => tMinC < windowLimit('frost', windows).value),
    wet: months.filter((month) => zone.wetDays[month] > windowLimit('wet-days', windows).value),
    birds: months.filter((month) => nests(nesting, northernTwin(month, latitudeDeg))),
    nesting,
    wetDays: zone.wetDays,
  }
}

/**
 * A window of the table as it falls at a latitude.
 *
 * @param text - northern month and days, such as "08" or "07:25-31"
 * @param latitudeDeg - latitude [°], north positive, -90 to 90
 * @returns the real month and days
 */
export function windowAt(text: string, latitudeDeg: number): Window {
  const [monthText, days] = text.split(':')
  const month = northernTwin((Number(monthText) - 1) as Month, latitudeDeg)
  const [from, to] = (days ?? `1-${daysInMonth[month]}`).split('-').map(Number)
  return { month, fromDay: from ?? 1, toDay: Math.min(to ?? daysInMonth[month], daysInMonth[month]) }
}

/**
 * Keep-offs of a zone under a cover.
 *
 * @param zoneId - the zone
 * @param cover - what stands on it
 * @param seasons - its seasons
 * @param tables - limits with their reasons
 * @returns wet ground for all, nesting for woody cover, frost for turf; none where no month is concerned
 */
export function keepOffOf(
  zoneId: string,
  cover: CareFacts['cover']['chosen'],
  seasons: Seasons,
  tables: CareTables,
): KeepOff[] {
  const wet = windowLimit('wet-days', tables.windows)
  const woody = cover === 'shrubs' || cover === 'trees'
  const all: KeepOff[] = [
    {
      zoneId,
      months: seasons.wet,
      reason: 'wet',
      text: `Too wet to work. ${wet.because}`,
      source: wet.source,
    },
    {
      zoneId,
      months: woody ? seasons.birds : [],
      reason: 'birds',
      text: seasons.nesting.text,
      source: seasons.nesting.source,
    },
    {
      zoneId,
      months: cover === 'mown' ? seasons.frost : [],
      reason: 'frost',
      text: 'Keep off frosted turf: trodden leaves die.',
      source: 'common-practice',
    },
  ]
  return all.filter((keepOff) => keepOff.months.length > 0)
}

function windowLimit(
  id: CareWindows['limits'][number]['id'],
  windows: CareWindows,
): CareWindows['limits'][number] {
  const row = windows.limits.find((limit) => limit.id === id)
  if (!row) throw new RangeError(`careYear: data/care/windows.json must hold ${id}, got none`)
  return row
}

function nestingOf(region: string | undefined, windows: CareWindows): NestingRow {
  const named = windows.nesting.find(({ regions }) => region !== undefined && regions.includes(region))
  const row = named ?? windows.nesting.find(({ regions }) => regions.includes('*'))
  if (!row) throw new RangeError('careYear: data/care/windows.json must hold a nesting row for *, got none')
  return row
}

const nests = (row: NestingRow, northernMonth: Month): boolean =>
  northernMonth + 1 >= row.fromMonth && northernMonth + 1 <= row.toMonth

const monthsWhere = (brief: CareBrief, holds: (normals: CareBrief['months'][number]) => boolean): Month[] =>
  months.filter((month) => {
    const normals = brief.months[month]
    return normals !== undefined && holds(normals)
  })
