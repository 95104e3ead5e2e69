import { bars } from './legal'
import type { Meeting } from './match.types'
import type { MatchReason } from './plants.types'

/** Dominance class that takes a zone and leaves it [class 0 to 5]. */
export const TAKES_ALL = 5

/**
 * What a person must know about a plant that is offered all the same.
 *
 * @param meeting - the plant before its site
 * @returns warnings, the law first, then poison, then habit
 */
export function warningsOf(meeting: Meeting): MatchReason[] {
  return [...legalWarnings(meeting), ...poisonWarnings(meeting), ...habitWarnings(meeting)]
}

function legalWarnings({ flags }: Meeting): MatchReason[] {
  return flags.legal
    .filter((row) => !bars(row))
    .map((row) => against('legal-warning', `${row.region}: ${row.effect} (${row.list})`, row.source))
}

function poisonWarnings({ flags: { toxicity } }: Meeting): MatchReason[] {
  if (!toxicity) return []
  const eaten = toxicity.ingestion
  return [
    ...(eaten === 'severe' || eaten === 'moderate'
      ? [
          against(
            'poisonous',
            `${eaten === 'severe' ? 'Severely poisonous' : 'Poisonous'} if eaten: ${toxicity.parts || 'parts not said'}.`,
            toxicity.source,
          ),
        ]
      : []),
    ...(toxicity.skin
      ? [against('skin', `Touching it: ${toxicity.skin}. Wear gloves.`, toxicity.source)]
      : []),
    ...(toxicity.animals ? [against('animals', `Animals: ${toxicity.animals}.`, toxicity.source)] : []),
  ]
}

function habitWarnings({ plant, site }: Meeting): MatchReason[] {
  return [
    ...(plant.dominance >= TAKES_ALL
      ? [
          against(
            'takes-over',
            `Takes a zone over, running up to ${plant.runMPerYear} m a year: alone only, and with an edge such as a path or a mown strip.`,
            plant.source,
          ),
        ]
      : []),
    ...(plant.flammable >= 2 ? [against('flammable', 'Burns readily when dry.', plant.source)] : []),
    ...(plant.thorns >= 2 ? [against('thorns', 'Thorny: keep it from paths.', plant.source)] : []),
    ...(site.ph === undefined && plant.ph.to <= 6.5
      ? [against('ph-unknown', `Dies on lime (pH above ${plant.ph.to}): test the pH first.`, plant.source)]
      : []),
  ]
}

function against(id: string, because: string, source: string): MatchReason {
  return { id, for: false, because, source }
}
