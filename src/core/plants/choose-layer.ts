import type { MixLine, PlantVerdict, Site } from './plants.types'
import { yearsToClose } from './closing'
import { layerShares } from './shares'

/** A layer to fill. */
export interface LayerTask {
  readonly layer: MixLine['layer']
  /** Share of the zone that the layer has, 0 to 1. */
  readonly share: number
  /** Most species in it. */
  readonly species: number
  /** True when taller plants will stand over it. */
  readonly shaded: boolean
}

/** What weighs beside the fit. */
export interface PickWish {
  /** Points that a native plant gains [points of 100]. */
  readonly nativePoints: number
  /** Ids of plants that must be in. */
  readonly insist: readonly string[]
}

/** A plant with its share of the zone. */
export interface Chosen {
  readonly verdict: PlantVerdict
  readonly share: number
  readonly insisted: boolean
}

/** Partners in one zone differ in dominance by less than this [classes], in height by less than this [ratio]. */
const DOMINANCE_GAP = 2
const HEIGHT_RATIO = 3

/** Highest dominance class of each try at a layer: the strong spreaders are left out step by step. */
const CALMER_AND_CALMER = [4, 3, 2] as const

/** Shares closer than this are the same [share]. */
const SHARE_TOLERANCE = 1e-9

/** Plants that leave gaps sooner than this are not relied on [a; own judgement]. */
const LEAST_LIFE_YEARS = 6

/** On a bank this steep [°] a plant must bind at least this class [own judgement]. */
const BINDER_SLOPE_DEG = 18
const BINDER_CLASS = 2

/** Most plants of one family in a layer [species; own judgement]. */
const FAMILY_MOST = 2

/** Points beside the fit for what makes a good cover [points of 100; own judgement]. */
const EVERGREEN_POINTS = { ground: 20, shrub: 12, tree: 0, meadow: 0 } as const
const CLOSING_POINTS = 18
const SHADE_POINTS = 6
const TALL_TREE_POINTS_PER_M = 0.6
const LOW_SHRUB_POINTS = 15
const TALL_GROUND_POINTS_PER_M = 15

/** Lower than this a shrub belongs to the ground layer first [m; own judgement]. */
const LOW_SHRUB_M = 0.5

/** Taller than this a plant is less and less of a ground cover [m; own judgement]. */
const TALL_GROUND_M = 0.5

/** Plants that take this long to close, or never do, earn no closing points [a; own judgement]. */
const SLOW_CLOSING_YEARS = 6

/**
 * Picks the plants of one layer and their shares: best first, each compatible with those before it. The pick
 * is made with and without strong spreaders, and the one that fills the layer with the best fit stands; last, one
 * plant stands alone.
 *
 * @param verdicts - offered plants of the layer; plants insisted on come first whatever their verdict
 * @param task - the layer to fill
 * @param site - what the zone offers
 * @param wish - points that a native plant gains [points of 100], ids insisted on
 * @returns the plants with their shares; empty when none is offered
 */
export function chooseLayer(
  verdicts: readonly PlantVerdict[],
  task: LayerTask,
  site: Site,
  wish: PickWish,
): Chosen[] {
  const insisted = (verdict: PlantVerdict) => wish.insist.includes(verdict.plant.id)
  const asked = verdicts.filter(insisted)
  const points = new Map(
    verdicts.map((verdict) => [verdict, pointsOf(verdict, task, site) + nativeGain(verdict, site, wish)]),
  )
  const pointsFor = (verdict: PlantVerdict) => points.get(verdict) ?? 0
  const ranked = verdicts
    .filter((verdict) => !insisted(verdict) && isReliable(verdict, site))
    .sort((one, other) => pointsFor(other) - pointsFor(one) || (one.plant.id < other.plant.id ? -1 : 1))
  const share = (picked: readonly PlantVerdict[]) => shareOut(picked, task.share, insisted)
  const tries = CALMER_AND_CALMER.map((most) => {
    const calm = ranked.filter(({ plant }) => plant.dominance <= most)
    return share(pickPartners(asked, calm, task.species))
  })
  const lone = share([...asked, ...(asked.length === 0 ? ranked.slice(0, 1) : [])])
  return bestOf([...tries, lone], task.share, pointsFor)
}

function isReliable({ plant, flags, bindingClass, offered }: PlantVerdict, site: Site): boolean {
  return (
    offered &&
    !flags.takesOver &&
    !plant.meadowOnly &&
    plant.lifeYears >= LEAST_LIFE_YEARS &&
    plant.lifeForm !== 'annual' &&
    plant.lifeForm !== 'bulb' &&
    (site.slopeDeg < BINDER_SLOPE_DEG || bindingClass >= BINDER_CLASS)
  )
}

function pointsOf({ plant, fit }: PlantVerdict, task: LayerTask, site: Site): number {
  if (task.layer === 'tree') return fit - plant.heightM * TALL_TREE_POINTS_PER_M
  const years = Math.min(yearsToClose(plant) ?? SLOW_CLOSING_YEARS, SLOW_CLOSING_YEARS)
  const closing = CLOSING_POINTS * (1 - years / SLOW_CLOSING_YEARS)
  const shade = task.shaded && plant.light.from < site.lightClass - 2 ? SHADE_POINTS : 0
  const evergreen = plant.winterCover * EVERGREEN_POINTS[task.layer]
  return fit + evergreen + closing + shade - wrongHeight(plant.heightM, task.layer)
}

function wrongHeight(heightM: number, layer: LayerTask['layer']): number {
  if (layer === 'shrub') return heightM < LOW_SHRUB_M ? LOW_SHRUB_POINTS : 0
  return Math.max(0, heightM - TALL_GROUND_M) * TALL_GROUND_POINTS_PER_M
}

function nativeGain({ plant }: PlantVerdict, site: Site, wish: PickWish): number {
  return plant.native.includes(site.region) ? wish.nativePoints : 0
}

function pickPartners(
  asked: readonly PlantVerdict[],
  ranked: readonly PlantVerdict[],
  species: number,
): PlantVerdict[] {
  const picked = [...asked]
  for (const verdict of ranked) {
    if (picked.length >= species) break
    if (picked.every((other) => areCompatible(other, verdict)) && familyHasRoom(picked, verdict))
      picked.push(verdict)
  }
  return picked
}

function areCompatible({ plant: one }: PlantVerdict, { plant: other }: PlantVerdict): boolean {
  const tallest = Math.max(one.heightM, other.heightM)
  const lowest = Math.min(one.heightM, other.heightM)
  return (
    Math.abs(one.dominance - other.dominance) < DOMINANCE_GAP &&
    tallest / lowest < HEIGHT_RATIO &&
    genusOf(one.name) !== genusOf(other.name)
  )
}

function familyHasRoom(picked: readonly PlantVerdict[], { plant }: PlantVerdict): boolean {
  const kin = picked.filter((other) => other.plant.family === plant.family).length
  // The second plant is always of another family, so that no mix is of one family alone.
  return kin < FAMILY_MOST && !(picked.length === 1 && kin === 1)
}

function genusOf(name: string): string {
  return name.split(' ')[0] ?? name
}

function shareOut(
  picked: readonly PlantVerdict[],
  layerShare: number,
  insisted: (verdict: PlantVerdict) => boolean,
): Chosen[] {
  const shares = layerShares(
    picked.map((verdict) => ({ dominance: verdict.plant.dominance, insisted: insisted(verdict) })),
    layerShare,
  )
  return picked.map((verdict, index) => ({
    verdict,
    share: shares[index] ?? 0,
    insisted: insisted(verdict),
  }))
}

// Of the tries that fill the layer with partners, the one with most points by share; else whichever fills most.
function bestOf(
  tries: readonly Chosen[][],
  wanted: number,
  pointsFor: (verdict: PlantVerdict) => number,
): Chosen[] {
  const filled = (chosen: readonly Chosen[]) => chosen.reduce((sum, { share }) => sum + share, 0)
  const worth = (chosen: readonly Chosen[]) =>
    chosen.reduce((sum, { share, verdict }) => sum + share * pointsFor(verdict), 0)
  const whole = tries.filter((chosen) => chosen.length > 1 && filled(chosen) >= wanted - SHARE_TOLERANCE)
  const measure = whole.length > 0 ? worth : filled
  return (whole.length > 0 ? whole : tries).reduce<Chosen[]>(
    (best, chosen) =>
      best.length === 0 || measure(chosen) > measure(best) + SHARE_TOLERANCE ? chosen : best,
    [],
  )
}
