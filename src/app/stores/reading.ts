import { monthNames, type Month } from '#core/units'
import type { Findings } from '#plan'
import type { QuestionId } from './sheet'

/** What the rod reads where it stands. */
export interface Reading {
  /** Short, for the tag on the drawing. */
  readonly tag: string
  /** In full, to be said aloud. */
  readonly words: string
  readonly zoneId: string | undefined
}

/** What is read at a distance from the top edge, to the question that is asked. */
export function readingAt(
  findings: Findings,
  atM: number,
  asked: { question: QuestionId; month: number },
): Reading {
  const { stations } = findings.terrain.section
  const station = stations.reduce((best, one) =>
    Math.abs(one.distanceM - atM) < Math.abs(best.distanceM - atM) ? one : best,
  )
  const zone = findings.zoning.zones[findings.zoning.zoneOfCell[station.cell] ?? -1]
  const lowest = Math.min(...stations.map(({ levelM }) => levelM))
  const where = `${atM.toFixed(1)} m`
  const height = `${(station.levelM - lowest).toFixed(1)} m above the foot`
  const slope = `${Math.round(station.slopeDeg)}°`
  const more = zone && answerAt(findings, { zoneId: zone.id, cell: station.cell }, asked)
  const zoneWords = zone ? `Zone ${zone.letter}, ${zone.name}. ` : ''
  return {
    tag: `${where}: ${more ?? `${slope}, ${height}`}`,
    words: `${zoneWords}${where} from the top edge, ${slope}, ${height}${more ? `, ${more}` : ''}.`,
    zoneId: zone?.id,
  }
}

interface Place {
  readonly zoneId: string
  readonly cell: number
}

function answerAt(
  findings: Findings,
  { zoneId, cell }: Place,
  { question, month }: { question: QuestionId; month: number },
): string | undefined {
  const own = findings.zones.find((zone) => zone.zoneId === zoneId)
  const at = month as Month
  const sunH = findings.sun.sunHours[at][cell] ?? 0
  const water = findings.water.units.find(({ id }) => id === zoneId)
  switch (question) {
    case 'water':
      return (
        water &&
        `${sum(water.months.map(({ wetDays }) => wetDays))} wet and ${sum(water.months.map(({ dryDays }) => dryDays))} dry days a year`
      )
    case 'sun':
      return `${sunH.toFixed(1)} h of sun on a clear ${monthNames[at]} day`
    case 'hold':
      return own && `${own.soil.textureClass}, ${own.soil.depthM} m deep`
    default:
      return undefined
  }
}

const sum = (days: readonly number[]): number => Math.round(days.reduce((total, one) => total + one, 0))
