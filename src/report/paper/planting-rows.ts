import type { MixLine, PlantVerdict } from '#core/plants'
import type { ZoneFacts } from '#core/zones'
import type { Findings, ZoneFindings } from '#plan'
import { grouped, withUnit } from '../words/figures-in-words'

/** A zone's part of the schedule, in words. */
export interface PlantingRows {
  readonly id: string
  readonly title: string
  readonly note: string
  readonly lines: readonly PlantingRow[]
}

interface PlantingRow {
  readonly id: string
  readonly name: string
  readonly common: string
  readonly amount: string
  readonly size: string
  readonly because: string
  /** Law, poison and spread. */
  readonly mind: string
}

/** The planting of every zone, as printed. */
export function plantingRows({ zoning, zones }: Findings): readonly PlantingRows[] {
  return zones.flatMap((found) => {
    const zone = zoning.zones.find(({ id }) => id === found.zoneId)
    return zone
      ? [
          {
            id: zone.id,
            title: `${zone.letter} ${zone.name}`,
            note: noteOf(found, zone),
            lines: linesOf(found),
          },
        ]
      : []
  })
}

function noteOf({ planting }: ZoneFindings, { slopeAreaM2 }: ZoneFacts): string {
  if (planting.mix.length === 0) return planting.none ?? 'Nothing is planted.'
  const { monthsToCover, costClass } = planting
  const when = monthsToCover
    ? ` Four fifths of the ground is covered in ${grouped(monthsToCover.from)} to ${withUnit(monthsToCover.to, 'months', 0)}.`
    : ''
  const cost = costClass === undefined ? '' : ` Cost class ${grouped(costClass, 1)} of 5.`
  return `${withUnit(slopeAreaM2, 'm²', 0)} on the slope.${when}${cost}`
}

function linesOf({ planting }: ZoneFindings): PlantingRow[] {
  const weighed = [...planting.offered, ...planting.refused]
  return planting.mix.flatMap((line) => {
    const verdict = weighed.find(({ plant }) => plant.id === line.plantId)
    return verdict ? [rowOf(line, verdict)] : []
  })
}

function rowOf(line: MixLine, verdict: PlantVerdict): PlantingRow {
  const { plant } = verdict
  const sown = line.seedG !== undefined
  return {
    id: plant.id,
    name: plant.name,
    common: plant.common,
    amount: sown ? `${withUnit(line.seedG, 'g')} of seed` : grouped(line.count),
    size: sown ? 'sown' : `${plant.unit}, ${withUnit(line.spacingM * 100, 'cm', 0)} apart`,
    because: line.because,
    mind: mindOf(verdict),
  }
}

/** Reasons that must be known before a plant is bought. */
const mustKnow = [
  'legal-warning',
  'poisonous',
  'skin',
  'animals',
  'takes-over',
  'thorns',
  'flammable',
  'ph-unknown',
]

function mindOf({ reasons, flags }: PlantVerdict): string {
  const warned = reasons.filter(({ id }) => mustKnow.includes(id)).map(({ because }) => because)
  return (
    [...(flags.barred ? ['Barred by law where the plot is.'] : []), ...warned].join(' ') || 'nothing known'
  )
}
