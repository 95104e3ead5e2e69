import { lightName, moistureName } from './words'
import type { Meeting } from './match.types'
import type { Site } from './plants.types'

/** One part of the fit: how much it weighs on this site, and how well the plant does in it, 0 to 1. */
interface FitPart {
  readonly id: string
  readonly weight: (site: Site) => number
  readonly score: (meeting: Meeting) => number
  readonly because: (meeting: Meeting) => string
  readonly source: string
}

/** Below this slope [°] holding the ground weighs nothing; above `full` it weighs all it can [own judgement]. */
const HOLDING_FROM_DEG = 8
const HOLDING_FULL_DEG = 30

/** What is left of the score at the end of a tolerated range [own judgement]. */
const SCORE_AT_LIMIT = 0.25

/** Distance inside the tolerated pH at which a plant is at ease [pH; own judgement]. */
const PH_AT_EASE = 0.7

const establishment = { easy: 1, usual: 0.65, slow: 0.25 } as const

/** The parts of the fit; weights are our own judgement and only their proportions count. */
export const fitParts: readonly FitPart[] = [
  {
    id: 'moisture-fit',
    weight: () => 32,
    score: ({ plant, site }) => closeness(site.moistureClass, plant.moisture),
    because: ({ plant, site }) =>
      `Likes ${moistureName(plant.moisture.best)} ground best; the zone is ${moistureName(site.moistureClass)}.`,
    source: 'own-judgement',
  },
  {
    id: 'light-fit',
    weight: () => 20,
    score: ({ plant, site }) => closeness(site.lightClass, plant.light),
    because: ({ plant, site }) =>
      `Likes ${lightName(plant.light.best)} best; the zone has ${lightName(site.lightClass)}.`,
    source: 'own-judgement',
  },
  {
    id: 'ph-fit',
    weight: ({ ph }) => (ph === undefined ? 0 : 8),
    score: ({ plant, site }) => {
      const inside = Math.min((site.ph ?? 7) - plant.ph.from, plant.ph.to - (site.ph ?? 7))
      return Math.min(1, SCORE_AT_LIMIT + ((1 - SCORE_AT_LIMIT) * Math.max(0, inside)) / PH_AT_EASE)
    },
    because: ({ plant, site }) =>
      `Bears pH ${plant.ph.from} to ${plant.ph.to}; the soil has ${(site.ph ?? 7).toFixed(1)}.`,
    source: 'own-judgement',
  },
  {
    id: 'holds-the-bank',
    weight: ({ slopeDeg }) =>
      24 * Math.min(1, Math.max(0, (slopeDeg - HOLDING_FROM_DEG) / (HOLDING_FULL_DEG - HOLDING_FROM_DEG))),
    score: ({ bindingClass }) => bindingClass / 5,
    because: ({ bindingClass, site }) =>
      `Soil binding class ${bindingClass} of 5 on a bank of ${Math.round(site.slopeDeg)}°.`,
    source: 'own-judgement',
  },
  {
    id: 'native',
    weight: () => 8,
    score: ({ plant, site }) => (plant.native.includes(site.region) ? 1 : 0.5),
    because: ({ plant, site }) =>
      plant.native.includes(site.region) ? 'Native to the region.' : 'Not native to the region.',
    source: 'own-judgement',
  },
  {
    id: 'establishment',
    weight: () => 8,
    score: ({ plant }) => establishment[plant.establishes],
    because: ({ plant }) =>
      ({ easy: 'Takes easily.', usual: 'Takes as most do.', slow: 'Slow to take.' })[plant.establishes],
    source: 'own-judgement',
  },
  {
    id: 'wildlife',
    weight: () => 6,
    score: ({ plant }) => plant.wildlife / 3,
    because: ({ plant }) => `Worth ${plant.wildlife} of 3 for wildlife.`,
    source: 'own-judgement',
  },
]

// 1 at the best value, falling in a straight line to the score at the limit.
function closeness(
  place: number,
  range: { readonly from: number; readonly best: number; readonly to: number },
): number {
  const away = Math.abs(place - range.best)
  const reach = place < range.best ? range.best - range.from : range.to - range.best
  return away === 0 ? 1 : Math.max(0, 1 - (1 - SCORE_AT_LIMIT) * (away / reach))
}
