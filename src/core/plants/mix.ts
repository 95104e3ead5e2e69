import type { PlantingWish } from './planting-wish'
import type { Plant } from './plant.schema'
import type { MixLine, PlantVerdict, Site } from './plants.types'
import { chooseLayer, type LayerTask } from './choose-layer'
import { layersOf } from './layer-plans'
import { meadowMix } from './meadow-mix'
import { plantedLine, sownLine } from './mix-lines'

/** A line of a mix with the verdict it rests on. */
export interface Mixed {
  readonly line: MixLine
  readonly verdict: PlantVerdict
}

/** A plant of a mix before it is counted out. */
interface Planned {
  readonly verdict: PlantVerdict
  readonly share: number
  readonly line: () => MixLine
}

/** Points that natives gain, tried in turn until the wanted share is met [points of 100; own judgement]. */
const NATIVE_TRIES = [0, 10, 25, 60, 1000] as const

/** Shares closer than this are the same [share]. */
const SHARE_TOLERANCE = 1e-9

/**
 * The mix for a zone. Natives weigh more and more until they have the wanted share; where the zone does not allow
 * it, the closest mix stands and each line that is not native says so.
 *
 * @param verdicts - verdicts on the plants of the cover
 * @param site - what the zone offers
 * @param wish - the cover, the native share wanted, 0 to 1 [m²/m²], and ids insisted on
 * @returns the lines, tallest layer first; empty when nothing suits
 */
export function mixOf(verdicts: readonly PlantVerdict[], site: Site, wish: PlantingWish): Mixed[] {
  const insist = allowed(verdicts, wish)
  let best: Planned[] = []
  for (const nativePoints of NATIVE_TRIES) {
    const mix = oneMix(verdicts, site, { cover: wish.cover, nativePoints, insist })
    if (best.length === 0 || nativeShareOf(mix, site) > nativeShareOf(best, site) + SHARE_TOLERANCE)
      best = mix
    if (nativeShareOf(best, site) >= wish.nativeShare - SHARE_TOLERANCE) return countedOut(best)
  }
  const excuse = excuseFor(best, site, wish)
  return countedOut(best).map((mixed) => (isNative(mixed.verdict, site) ? mixed : withReason(mixed, excuse)))
}

function countedOut(mix: readonly Planned[]): Mixed[] {
  return mix.map(({ verdict, line }) => ({ verdict, line: line() }))
}

// Plants insisted on, less those that the law bars or the cover has no place for.
function allowed(verdicts: readonly PlantVerdict[], wish: PlantingWish): string[] {
  const asked = verdicts.filter(({ plant }) => wish.insist?.includes(plant.id))
  return asked
    .filter(({ flags, reasons }) => !flags.barred && !reasons.some(({ id }) => id === 'not-for-this-cover'))
    .map(({ plant }) => plant.id)
}

interface OneWish {
  readonly cover: PlantingWish['cover']
  readonly nativePoints: number
  readonly insist: readonly string[]
}

function oneMix(verdicts: readonly PlantVerdict[], site: Site, wish: OneWish): Planned[] {
  const usable = verdicts.filter((verdict) => verdict.offered || wish.insist.includes(verdict.plant.id))
  if (wish.cover === 'meadow')
    return meadowMix(usable, site, wish).map((sown) => ({
      verdict: sown.verdict,
      share: sown.share,
      line: () => sownLine(sown, site),
    }))
  const taken = new Set<string>()
  return layersOf(wish.cover, site.slopeAreaM2).flatMap((task) => {
    const free = usable.filter(({ plant }) => !taken.has(plant.id) && standsIn(plant, task, wish))
    const chosen = chooseLayer(free, task, site, wish)
    for (const { verdict } of chosen) taken.add(verdict.plant.id)
    return chosen.map((one) => ({
      verdict: one.verdict,
      share: one.share,
      line: () => plantedLine(one, task.layer, site),
    }))
  })
}

function standsIn(plant: Plant, { layer }: LayerTask, { insist }: OneWish): boolean {
  if (layer === 'meadow') return false
  const filler = layer === 'ground' && plant.uses.includes('filler') && insist.includes(plant.id)
  return plant.uses.includes(layer) || filler
}

function isNative({ plant }: PlantVerdict, site: Site): boolean {
  return plant.native.includes(site.region)
}

function nativeShareOf(mix: readonly Planned[], site: Site): number {
  const total = mix.reduce((sum, { share }) => sum + share, 0)
  const native = mix.reduce((sum, { share, verdict }) => sum + (isNative(verdict, site) ? share : 0), 0)
  return total > 0 ? native / total : 0
}

function excuseFor(mix: readonly Planned[], site: Site, wish: PlantingWish): string {
  const reached = Math.round(nativeShareOf(mix, site) * 100)
  const wanted = Math.round(wish.nativeShare * 100)
  return `Not native: you want ${wanted} % native, and what suits the zone makes ${reached} %.`
}

function withReason(mixed: Mixed, reason: string): Mixed {
  return { ...mixed, line: { ...mixed.line, because: `${mixed.line.because} ${reason}` } }
}
