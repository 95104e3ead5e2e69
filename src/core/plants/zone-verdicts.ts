import type { LayerTask } from './choose-layer'
import type { MatchBrief } from './match.types'
import type { Plant } from './plant.schema'
import type { PlantingWish } from './planting-wish'
import type { MatchReason, PlantTables, PlantVerdict, Site } from './plants.types'
import { layersOf } from './layer-plans'
import { plantVerdict } from './verdict'

/**
 * The verdict on every plant that grows under a cover, and on every plant the person insists on.
 *
 * @param site - what the zone offers
 * @param tables - plants, legal lists, poisonous plants
 * @param wish - the cover and what the person wants
 * @returns verdicts in the order of the table; a plant insisted on that the cover has no place for is refused
 */
export function zoneVerdicts(site: Site, tables: PlantTables, wish: PlantingWish): PlantVerdict[] {
  const layers = layersOf(wish.cover, site.slopeAreaM2).map(({ layer }) => layer)
  const brief: MatchBrief = {
    children: wish.children,
    pets: wish.pets,
    cover: wish.cover,
    heightLimitM: wish.heightLimitM,
    without: wish.without,
  }
  return tables.plants.flatMap((plant) => {
    if (belongs(plant, wish.cover, layers)) return [byHand(plantVerdict(plant, site, tables, brief), wish)]
    if (wish.insist?.includes(plant.id)) return [outOfPlace(plantVerdict(plant, site, tables, brief), wish)]
    return []
  })
}

function belongs(plant: Plant, cover: PlantingWish['cover'], layers: readonly LayerTask['layer'][]): boolean {
  if (cover === 'meadow') return plant.uses.includes('meadow')
  if (plant.meadowOnly) return false
  return (
    plant.uses.includes('filler') || layers.some((layer) => layer !== 'meadow' && plant.uses.includes(layer))
  )
}

// Bulbs are offered for meadows but are no part of the seed.
function byHand(verdict: PlantVerdict, wish: PlantingWish): PlantVerdict {
  if (wish.cover !== 'meadow' || verdict.plant.lifeForm !== 'bulb') return verdict
  return withReason(verdict, {
    id: 'set-by-hand',
    for: false,
    because: 'Set by hand once the sward has closed; it is no part of the seed.',
    source: 'common-practice',
  })
}

function outOfPlace(verdict: PlantVerdict, wish: PlantingWish): PlantVerdict {
  const refused = { ...verdict, offered: false, fit: 0 }
  return withReason(refused, {
    id: 'not-for-this-cover',
    for: false,
    because: `You ask for it, but it has no place under the cover “${wish.cover}”: choose another cover for the zone.`,
    source: 'yours',
  })
}

function withReason(verdict: PlantVerdict, reason: MatchReason): PlantVerdict {
  return { ...verdict, reasons: [reason, ...verdict.reasons] }
}
