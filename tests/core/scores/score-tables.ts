import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { factNames, scoreRulesSchema, type FactName, type ScoreFacts } from '#core/scores'

const read = (file: string): unknown =>
  JSON.parse(readFileSync(join(import.meta.dirname, '../../../data/rules', `${file}.json`), 'utf8'))

export const tables = {
  bases: read('bases'),
  wetness: read('wetness'),
  sun: read('sun'),
  erosion: read('erosion'),
  frost: read('frost'),
  working: read('working'),
  classes: read('classes'),
  moistureScale: read('moisture-scale'),
  lightScale: read('light-scale'),
  changes: read('changes'),
}
export const rules = scoreRulesSchema.parse(tables)

/** A middling place: loam, half way up a gentle slope, in a mild climate. */
export const middling: ScoreFacts = {
  slopeDeg: 12,
  steepSlopeDeg: 14,
  position: 0.5,
  formDown: 0,
  formAcross: 0,
  heightAboveFootM: 3,
  seasonSunRatio: 1,
  midsummerSunHours: 8,
  midwinterSunHours: 3,
  availableWaterMm: 120,
  drainableMm: 60,
  conductivityMmPerH: 10,
  depthM: 0.8,
  stonesPercent: 5,
  runOnMm: 20,
  yearRainLessEtMm: 0,
  summerRainLessEtMm: -150,
  wetDays: 20,
  airlessDays: 2,
  dryDays: 30,
  winterFullness: 0.8,
  summerFullness: 0.5,
  erosionBareTPerHa: 15,
  erosionCoveredTPerHa: 0.3,
  coldestMonthTMinC: 1,
  hardWinterC: -9,
}

/** From the arctic to the desert, from gravel to clay, from hollow to crest. */
const ranges: Readonly<Record<FactName, readonly [number, number]>> = {
  slopeDeg: [0, 60],
  steepSlopeDeg: [0, 70],
  position: [0, 1],
  formDown: [-0.3, 0.3],
  formAcross: [-0.3, 0.3],
  heightAboveFootM: [0, 40],
  seasonSunRatio: [0, 2],
  midsummerSunHours: [0, 24],
  midwinterSunHours: [0, 12],
  availableWaterMm: [1, 400],
  drainableMm: [1, 400],
  conductivityMmPerH: [0.01, 300],
  depthM: [0.02, 3],
  stonesPercent: [0, 90],
  runOnMm: [0, 5000],
  yearRainLessEtMm: [-2500, 4000],
  summerRainLessEtMm: [-1500, 2000],
  wetDays: [0, 365],
  airlessDays: [0, 365],
  dryDays: [0, 365],
  winterFullness: [0, 1.6],
  summerFullness: [0, 1.6],
  erosionBareTPerHa: [0, 900],
  erosionCoveredTPerHa: [0, 200],
  coldestMonthTMinC: [-50, 28],
  hardWinterC: [-60, 20],
}

/** Fact sets drawn evenly from all soils and climates, the same for the same seed (Park and Miller 1988). */
export function randomFacts(count: number, seed: number): ScoreFacts[] {
  let state = seed
  const next = () => {
    state = (state * 48271) % 2147483647
    return state / 2147483647
  }
  return Array.from({ length: count }, () => {
    const facts = { ...middling }
    return factNames.reduce((so, name) => {
      const [from, to] = ranges[name]
      return { ...so, [name]: from + next() * (to - from) }
    }, facts)
  })
}
