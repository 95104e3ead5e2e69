import type { LegalRow, MixLine, Plant, PlantFlags, ToxicityRow } from '#core/plants'
import { grouped, withUnit } from '../../words/figures-in-words'

/** Something that must be known before a plant is set, in words and with its own mark. */
export interface FlagWords {
  readonly kind: 'law' | 'poison' | 'takes-over' | 'thorns'
  readonly head: string
  readonly text: string
}

/** Everything to be warned of, law first. */
export function flagWords(flags: PlantFlags, plant: Plant): FlagWords[] {
  return [
    ...flags.legal.map(lawWords),
    ...(flags.toxicity && isPoisonous(flags.toxicity) ? [poisonWords(flags.toxicity)] : []),
    ...(flags.takesOver
      ? [
          {
            kind: 'takes-over' as const,
            head: 'Takes over',
            text: 'It will crowd out what stands beside it.',
          },
        ]
      : []),
    ...(plant.thorns >= MUCH_THORN
      ? [{ kind: 'thorns' as const, head: 'Thorns', text: 'Wear gloves.' }]
      : []),
  ]
}

/** Of 3. */
const MUCH_THORN = 2

function lawWords({ list, region, effect }: LegalRow): FlagWords {
  return { kind: 'law', head: 'Law', text: `${list}, ${region}: ${effect}` }
}

function isPoisonous({ ingestion, skin, animals }: ToxicityRow): boolean {
  return ingestion !== 'none' || skin !== '' || animals !== ''
}

const harm: Readonly<Record<ToxicityRow['ingestion'], string>> = {
  none: '',
  low: 'upsets the stomach if eaten',
  moderate: 'poisonous if eaten',
  severe: 'very poisonous if eaten',
}

function poisonWords({ ingestion, parts, skin, animals }: ToxicityRow): FlagWords {
  const eaten = harm[ingestion] ? `${harm[ingestion]}${parts ? ` (${parts})` : ''}` : ''
  const said = [eaten, skin, animals].filter(Boolean).join('; ')
  return {
    kind: 'poison',
    head: ingestion === 'severe' || ingestion === 'moderate' ? 'Poison' : 'Mind',
    text: `${said.slice(0, 1).toUpperCase()}${said.slice(1)}.`,
  }
}

/** What is bought: plants by number, seed by weight. */
export function amountOf({ count, seedG }: MixLine): { readonly figure: string; readonly unit: string } {
  if (count > 0 || seedG === undefined)
    return { figure: grouped(count), unit: count === 1 ? 'plant' : 'plants' }
  return seedG < 1000
    ? { figure: grouped(seedG), unit: 'g of seed' }
    : { figure: grouped(seedG / 1000, 1), unit: 'kg of seed' }
}

/** "0.35 m apart". */
export function spacingWords({ spacingM, count }: MixLine): string {
  return count > 0 ? `${grouped(spacingM, 2)} m apart along the slope, rows staggered` : 'sown broadcast'
}

/** "9 to 13 months". */
export function monthsWords(months: MixLine['monthsToCover']): string {
  return months ? `${grouped(months.from)} to ${withUnit(months.to, 'months', 0)}` : 'not known'
}

export const layerWords: Readonly<Record<MixLine['layer'], string>> = {
  tree: 'Trees',
  shrub: 'Shrubs',
  ground: 'Ground cover',
  meadow: 'Meadow',
}
