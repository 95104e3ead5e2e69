import type { SlopeBand } from './zone.types'

/** What a name is made from. */
interface NameFacts {
  readonly band: SlopeBand
  readonly slopeDeg: number
  readonly plotSlopeDeg: number
  /** Level plots have no upper and lower parts. */
  readonly level: boolean
  /** Radiation over open level ground, growing season [ratio]. */
  readonly seasonSunRatio: number
}

/** A zone this much steeper or gentler than the plot is called after it [°]; own judgement. */
const APART_DEG = 5
/** Ground this steep may be called steep, this gentle a shelf [°]; own judgement. */
const STEEP_DEG = 15
const SHELF_DEG = 10
/** Difference in season radiation that a name may speak of [ratio]; own judgement. */
const SUN_APART = 0.1

const bandNames: Readonly<Record<SlopeBand, string>> = {
  crest: 'Crest',
  upper: 'Upper bank',
  mid: 'Middle bank',
  lower: 'Lower bank',
  foot: 'Foot',
}

/**
 * Names zones in plain words, each name once.
 *
 * @param zones - what names are made from, from the top down
 * @returns a name for each
 */
export function nameZones(zones: readonly NameFacts[]): readonly string[] {
  const plain = zones.map(plainName)
  const bySun = distinct(plain, (same) => sunSides(same.map((at) => zones[at]?.seasonSunRatio ?? 0)))
  return distinct(bySun, (same) => heights(same.length))
}

function plainName({ band, slopeDeg, plotSlopeDeg, level }: NameFacts): string {
  if (level) return 'Level ground'
  if (slopeDeg >= STEEP_DEG && slopeDeg > plotSlopeDeg + APART_DEG) return 'Steep face'
  const gentle = slopeDeg <= SHELF_DEG && slopeDeg < plotSlopeDeg - APART_DEG
  return gentle && band !== 'crest' && band !== 'foot' ? 'Shelf' : bandNames[band]
}

// Adds to names that stand more than once what tells them apart.
function distinct(names: readonly string[], additions: (same: readonly number[]) => string[]): string[] {
  const named = [...names]
  for (const name of new Set(names)) {
    const same = names.flatMap((other, at) => (other === name ? [at] : []))
    const added = same.length > 1 ? additions(same) : ['']
    same.forEach((at, order) => (named[at] = `${name}${added[order] ?? ''}`))
  }
  return named
}

// Two zones of one name are told apart by sun when one has clearly more.
function sunSides(ratios: readonly number[]): string[] {
  const [one = 0, other = 0] = ratios
  if (ratios.length !== 2 || Math.abs(one - other) < SUN_APART) return ratios.map(() => '')
  return one > other ? [', sunny side', ', shady side'] : [', shady side', ', sunny side']
}

// Two or three of one name lie above each other; more are counted.
function heights(count: number): string[] {
  if (count === 2) return [', higher', ', lower']
  return Array.from({ length: count }, (_, at) => ` ${at + 1}`)
}
