import { windName } from '#core/units'
import type { SlopeBand, ZoneFacts } from './zone.types'

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
 * @param zones - the measured zones, from the top down
 * @param level - true for a plot too level to have an upper and a lower part
 * @returns a name for each
 */
export function nameZones(zones: readonly ZoneFacts[], level: boolean): readonly string[] {
  const areaM2 = zones.reduce((sum, zone) => sum + zone.planAreaM2, 0)
  const plotSlopeDeg = zones.reduce((sum, zone) => sum + zone.planAreaM2 * zone.slopeDegMean, 0) / areaM2
  const plain = zones.map((zone) => (level ? 'Level ground' : plainName(zone, plotSlopeDeg)))
  const pick = <Fact>(same: readonly number[], of: (zone: ZoneFacts) => Fact) =>
    same.flatMap((at) => zones.slice(at, at + 1).map(of))
  const bySun = distinct(plain, (same) => sunSides(pick(same, ({ seasonSunRatio }) => seasonSunRatio)))
  const byWind = distinct(bySun, (same) => winds(pick(same, ({ aspectDeg }) => aspectDeg)))
  return distinct(byWind, (same) => heights(same.length))
}

function plainName({ band, slopeDegMean }: ZoneFacts, plotSlopeDeg: number): string {
  if (slopeDegMean >= STEEP_DEG && slopeDegMean > plotSlopeDeg + APART_DEG) return 'Steep face'
  const gentle = slopeDegMean <= SHELF_DEG && slopeDegMean < plotSlopeDeg - APART_DEG
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

// Zones of one name that all face different ways are told apart by them.
function winds(aspectsDeg: readonly (number | undefined)[]): string[] {
  const names = aspectsDeg.map((aspectDeg) => (aspectDeg === undefined ? '' : windName(aspectDeg)))
  const apart = new Set(names).size === names.length && !names.includes('')
  return names.map((name) => (apart ? `, facing ${name}` : ''))
}

// Two of one name lie one above the other; more are counted from the top.
function heights(count: number): string[] {
  if (count === 2) return [', higher', ', lower']
  return Array.from({ length: count }, (_, at) => ` ${at + 1}`)
}
