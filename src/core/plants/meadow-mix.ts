import type { PickWish } from './choose-layer'
import type { PlantVerdict, Site } from './plants.types'

/** Seed of a perennial meadow on open ground, and on a slope that may wash [g/m²; seed growers' advice]. */
const SEED_G_PER_M2 = 4
const SEED_ON_SLOPE_G_PER_M2 = 5

/** Slope that counts as at risk of washing [°; own judgement]. */
const WASHING_SLOPE_DEG = 15

/** Grass in the seed by weight [ratio; seed growers' advice: 80 grass to 20 flowers]. */
const GRASS_SHARE = 0.8

/** Yellow rattle: fresh seed beside the mix [g/m²; seed growers' range 0.1 to 1], and the steepest slope for it [°]. */
const RATTLE = 'Rhinanthus minor'
const RATTLE_G_PER_M2 = 0.5
const RATTLE_SLOPE_DEG = 20

/** Points that natives gain in any sown meadow: seed of the region is asked for [points of 100; own judgement]. */
const REGIONAL_SEED_POINTS = 25

/** The most that one flower has of the seed by weight [share; own judgement]. */
const FLOWER_SHARE_MOST = 0.05

/** Most species of each kind in a mix [species; own judgement]. */
const GRASSES_MOST = 5
const FLOWERS_MOST = 14
const FLOWERS_PER_FAMILY = 4

/** A species that spreads more than this is left out of sown mixes [dominance class]. */
const SOWN_DOMINANCE = 3

/** The most that the strongest spreaders allowed get of the mix by weight [share]. */
const SPREADER_SHARE = 0.4

/** Weights of the grasses, best first [own judgement after neutral meadow mixes]. */
const GRASS_WEIGHTS = [0.36, 0.24, 0.16, 0.13, 0.11] as const

/** A species of a sown mix. */
export interface Sown {
  readonly verdict: PlantVerdict
  /** Share of the seed by weight, 0 to 1; 0 for yellow rattle, which holds nothing. */
  readonly share: number
  readonly gPerM2: number
  readonly because: string
}

/**
 * A sown meadow: grasses that close the sward, and flowers, 80 to 20 by weight.
 *
 * @param verdicts - offered plants that grow in meadows
 * @param site - what the zone offers
 * @param wish - points that a native plant gains [points of 100], ids insisted on
 * @returns the mix with its seed [g/m²]; empty when no grass suits, as flowers alone do not hold a slope
 */
export function meadowMix(verdicts: readonly PlantVerdict[], site: Site, wish: PickWish): Sown[] {
  const ranked = rank(verdicts, site, wish)
  const grasses = ranked.filter(isGrass).slice(0, GRASSES_MOST)
  if (grasses.length === 0) return []
  const flowers = manyFamilies(ranked.filter(isFlower))
  const rate = site.slopeDeg >= WASHING_SLOPE_DEG ? SEED_ON_SLOPE_G_PER_M2 : SEED_G_PER_M2
  const flowerShare = flowers.length > 0 ? Math.min(FLOWER_SHARE_MOST, (1 - GRASS_SHARE) / flowers.length) : 0
  const grassShare = 1 - flowerShare * flowers.length
  const grassShares = weightShares(grasses, grassShare)
  return [
    ...grasses.map((verdict, index) =>
      sown(verdict, grassShares[index] ?? 0, rate, `Grass that closes the sward; fit ${verdict.fit} of 100.`),
    ),
    ...flowers.map((verdict) =>
      sown(verdict, flowerShare, rate, `Flower of the mix; fit ${verdict.fit} of 100.`),
    ),
    ...rattle(ranked, site),
  ]
}

function rank(verdicts: readonly PlantVerdict[], site: Site, wish: PickWish): PlantVerdict[] {
  const points = ({ plant, fit }: PlantVerdict) =>
    (wish.insist.includes(plant.id) ? 1000 : 0) +
    (plant.native.includes(site.region) ? wish.nativePoints + REGIONAL_SEED_POINTS : 0) +
    fit
  return verdicts
    .filter(
      ({ plant, flags }) =>
        wish.insist.includes(plant.id) || (!flags.takesOver && plant.dominance <= SOWN_DOMINANCE),
    )
    .sort((one, other) => points(other) - points(one) || (one.plant.id < other.plant.id ? -1 : 1))
}

function isGrass({ plant }: PlantVerdict): boolean {
  return plant.lifeForm === 'grass' || plant.lifeForm === 'sedge-rush'
}

function isFlower({ plant }: PlantVerdict): boolean {
  return plant.lifeForm === 'perennial' || plant.lifeForm === 'biennial' || plant.lifeForm === 'subshrub'
}

function manyFamilies(ranked: readonly PlantVerdict[]): PlantVerdict[] {
  const picked: PlantVerdict[] = []
  for (const verdict of ranked) {
    const kin = picked.filter(({ plant }) => plant.family === verdict.plant.family).length
    if (kin < FLOWERS_PER_FAMILY && picked.length < FLOWERS_MOST) picked.push(verdict)
  }
  return picked
}

// Weights by rank, the strongest spreaders held down as long as others can take the rest.
function weightShares(grasses: readonly PlantVerdict[], total: number): number[] {
  const held = grasses.some(({ plant }) => plant.dominance < SOWN_DOMINANCE)
  const weights = grasses.map(({ plant }, index) =>
    held && plant.dominance >= SOWN_DOMINANCE
      ? Math.min(GRASS_WEIGHTS[index] ?? 0, SPREADER_SHARE / 2)
      : (GRASS_WEIGHTS[index] ?? 0),
  )
  const sum = weights.reduce((running, weight) => running + weight, 0)
  return weights.map((weight) => (total * weight) / sum)
}

function sown(verdict: PlantVerdict, share: number, rate: number, because: string): Sown {
  return { verdict, share, gPerM2: share * rate, because }
}

// An annual half-parasite opens the grass for flowers, and leaves a gap when it dies: never on steep ground.
function rattle(ranked: readonly PlantVerdict[], site: Site): Sown[] {
  const verdict = ranked.find(({ plant }) => plant.name === RATTLE)
  if (!verdict || site.slopeDeg >= RATTLE_SLOPE_DEG) return []
  return [
    {
      verdict,
      share: 0,
      gPerM2: RATTLE_G_PER_M2,
      because:
        'Weakens the grass so that flowers come in. Fresh seed only, sown from September to December into open turf, beside the mix; it holds no soil.',
    },
  ]
}
