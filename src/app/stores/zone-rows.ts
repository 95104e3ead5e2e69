import { jobsInMonth } from '#core/care'
import { windName, type Month } from '#core/units'
import { coverWords, verdictWords } from '#report'
import type { Findings, ZoneFindings } from '#plan'
import type { ZoneFacts } from '#core/zones'
import type { QuestionId } from './sheet'

/** A zone as one row: the answer for it, the figure, and a note to each. */
export interface ZoneRow {
  readonly id: string
  readonly letter: string
  readonly name: string
  readonly slopeDeg: number
  readonly says: string
  readonly note: string
  readonly figure: string
  readonly figureNote: string
  readonly never: boolean
}

type Words = Pick<ZoneRow, 'says' | 'note' | 'figure' | 'figureNote'>

interface Row {
  readonly zone: ZoneFacts
  readonly own: ZoneFindings
  readonly findings: Findings
  readonly month: Month
}

/** Zone by zone, the answer to the question that is asked. */
export function zoneRows(findings: Findings, question: QuestionId, month: Month): ZoneRow[] {
  return findings.zoning.zones.flatMap((zone) => {
    const own = findings.zones.find(({ zoneId }) => zoneId === zone.id)
    if (!own) return []
    const { id, letter, name, slopeDegSteep } = zone
    return [
      {
        ...{ id, letter, name, slopeDeg: slopeDegSteep },
        ...words[question]({ zone, own, findings, month }),
        never: question === 'mow' && own.cover.mowing === 'never',
      },
    ]
  })
}

const words: Readonly<Record<QuestionId, (row: Row) => Words>> = {
  ground: ({ zone, own }) => ({
    says: zone.name,
    note: zone.aspectDeg === undefined ? 'level' : `faces ${windName(zone.aspectDeg)}`,
    figure: area(zone.slopeAreaM2),
    figureNote: own.soil.textureClass,
  }),
  water: ({ zone, findings }) => ({
    says: zone.name,
    note: `too dry ${days(findings, zone.id, 'dryDays')} d a year`,
    figure: `${days(findings, zone.id, 'wetDays')} d`,
    figureNote: 'too wet a year',
  }),
  sun: ({ zone, month }) => ({
    says: zone.name,
    note: `${Math.round(zone.seasonSunRatio * 100)} % of open ground`,
    figure: `${zone.sunHours[month].toFixed(1)} h`,
    figureNote: 'a clear day',
  }),
  mow: ({ zone, own, findings }) => ({
    says: verdictWords[own.cover.mowing],
    note: coverWords[own.cover.chosen],
    figure: area(zone.slopeAreaM2),
    figureNote: `${hours(findings, zone.id).toFixed(1)} h a year`,
  }),
  hold: ({ own }) => ({
    says: coverWords[own.cover.chosen],
    note: own.planting.monthsToCover
      ? `covers in ${own.planting.monthsToCover.from} to ${own.planting.monthsToCover.to} months`
      : 'nothing to plant',
    figure: own.planting.mix.reduce((sum, line) => sum + line.count, 0).toLocaleString('en-GB'),
    figureNote: 'plants',
  }),
  month: ({ zone, findings, month }) => {
    const jobs = jobsInMonth(findings.care, month).filter(({ zoneId }) => zoneId === zone.id)
    return {
      says: jobs.map(({ what }) => what).join('; ') || 'Nothing',
      note: zone.name,
      figure: `${jobs.reduce((sum, job) => sum + job.hours, 0).toFixed(1)} h`,
      figureNote: 'this month',
    }
  },
  handover: ({ zone, own }) => ({
    says: coverWords[own.cover.chosen],
    note: zone.name,
    figure: area(zone.slopeAreaM2),
    figureNote: 'on the slope',
  }),
}

const area = (m2: number): string => `${Math.round(m2).toLocaleString('en-GB')} m²`

function days({ water }: Findings, zoneId: string, key: 'wetDays' | 'dryDays'): number {
  const months = water.units.find(({ id }) => id === zoneId)?.months ?? []
  return Math.round(months.reduce((sum, month) => sum + month[key], 0))
}

const hours = ({ care }: Findings, zoneId: string): number =>
  care.zones.find((zone) => zone.zoneId === zoneId)?.account.total ?? 0
