import type { CoverKind } from '#core/cover'
import type { LayerTask } from './choose-layer'

type Layer = LayerTask['layer']

/** Share of the zone that each layer of a planted cover has [m²/m²; own judgement]. */
const layerPlans: Readonly<Partial<Record<CoverKind, readonly { layer: Layer; share: number }[]>>> = {
  'ground-cover': [{ layer: 'ground', share: 1 }],
  terrace: [{ layer: 'ground', share: 1 }],
  shrubs: [
    { layer: 'shrub', share: 0.6 },
    { layer: 'ground', share: 0.4 },
  ],
  trees: [
    { layer: 'tree', share: 0.2 },
    { layer: 'shrub', share: 0.4 },
    { layer: 'ground', share: 0.4 },
  ],
}

/** Species in a layer by the zone's slope area: one more from each area on [m²; own judgement]. */
const speciesSteps: Readonly<
  Record<Layer, { readonly least: number; readonly oneMoreFrom: readonly number[] }>
> = {
  ground: { least: 2, oneMoreFrom: [15, 60, 200] },
  shrub: { least: 2, oneMoreFrom: [20, 80] },
  tree: { least: 1, oneMoreFrom: [300, 1000] },
  meadow: { least: 1, oneMoreFrom: [] },
}

/**
 * The layers that a cover is planted in.
 *
 * @param cover - what the zone is to be
 * @param slopeAreaM2 - area of the zone on the slope [m²], above 0
 * @returns layers with their share of the zone and the number of species; empty for covers that are not planted
 */
export function layersOf(cover: CoverKind, slopeAreaM2: number): LayerTask[] {
  const plans = layerPlans[cover] ?? []
  return plans.map(({ layer, share }) => {
    const { least, oneMoreFrom } = speciesSteps[layer]
    return {
      layer,
      share,
      species: least + oneMoreFrom.filter((areaM2) => slopeAreaM2 >= areaM2).length,
      shaded: layer === 'ground' && plans.length > 1,
    }
  })
}
