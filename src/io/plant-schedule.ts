import type { MixLine, PlantVerdict } from '#core/plants'
import type { ZoneFacts } from '#core/zones'
import type { Findings, Plan } from '#plan'
import { csvText, rounded, type CsvCell } from './csv-text'

/**
 * What to order and where it goes, one row to each plant of each zone, with what the law says and what is poisonous.
 *
 * @param plan - the plan
 * @param findings - what follows from it
 * @returns CSV text
 */
export function plantSchedule(plan: Plan, findings: Findings): string {
  const columns = Object.keys(cells)
  const rows = findings.zones.flatMap((found) => {
    const zone = findings.zoning.zones.find(({ id }) => id === found.zoneId)
    if (!zone) return []
    return found.planting.mix.flatMap((line) => {
      const verdict = [...found.planting.offered, ...found.planting.refused].find(
        ({ plant }) => plant.id === line.plantId,
      )
      return verdict ? [Object.values(cells).map((cell) => cell({ zone, line, verdict, plan }))] : []
    })
  })
  return csvText(columns, rows)
}

interface Row {
  readonly zone: ZoneFacts
  readonly line: MixLine
  readonly verdict: PlantVerdict
  readonly plan: Plan
}

/** Columns of the schedule, in order. */
const cells: Readonly<Record<string, (row: Row) => CsvCell>> = {
  zone: ({ zone }) => zone.letter,
  zoneName: ({ zone }) => zone.name,
  zoneSlopeAreaM2: ({ zone }) => rounded(zone.slopeAreaM2, 1),
  layer: ({ line }) => line.layer,
  botanicalName: ({ verdict }) => verdict.plant.name,
  commonName: ({ verdict }) => verdict.plant.common,
  size: ({ line, verdict }) => (line.seedG === undefined ? verdict.plant.unit : 'seed'),
  count: ({ line }) => (line.seedG === undefined ? line.count : undefined),
  seedG: ({ line }) => rounded(line.seedG, 1),
  spacingOnSlopeM: ({ line }) => (line.seedG === undefined ? rounded(line.spacingM, 2) : undefined),
  perM2OfSlope: ({ line }) => (line.seedG === undefined ? rounded(line.perM2, 2) : undefined),
  sharePercent: ({ line }) => rounded(line.share * 100, 0),
  monthsToCoverFrom: ({ line }) => rounded(line.monthsToCover?.from, 0),
  monthsToCoverTo: ({ line }) => rounded(line.monthsToCover?.to, 0),
  costClass: ({ verdict }) => verdict.plant.cost,
  law: ({ verdict, plan }) =>
    plan.site.legalRegion === undefined
      ? 'not checked: no country set'
      : verdict.flags.legal.map(({ region, effect }) => `${region}: ${effect}`).join('; ') || 'none known',
  poison: ({ verdict }) => poisonWords(verdict),
  takesOver: ({ verdict }) => (verdict.flags.takesOver ? 'yes' : 'no'),
  why: ({ line }) => line.because,
}

/** What is known to be poisonous about a plant, in a few words. */
function poisonWords({ flags: { toxicity } }: PlantVerdict): string {
  if (!toxicity) return 'none known'
  const eaten = toxicity.ingestion === 'none' ? '' : `${toxicity.ingestion} if eaten (${toxicity.parts})`
  const skin = toxicity.skin ? `skin: ${toxicity.skin}` : ''
  const animals = toxicity.animals ? `animals: ${toxicity.animals}` : ''
  return [eaten, skin, animals].filter(Boolean).join('; ') || 'none known'
}
