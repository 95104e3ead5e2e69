import type { Crown, Screen, Standing } from './shade.types'
import { isHard } from './things-parts'
import { meetCrown, meetScreen, type Looking, type Met } from './things-rises'

/** What a thing covers of one direction, seen from each cell: all its screens together, or one of its crowns. */
export interface Layer extends Met {
  readonly thing: Standing
  readonly parts: readonly Screen[] | Crown
}

/**
 * The layers of things that hide only a part of the sky: all crowns, and screens through which light comes.
 *
 * @param standing - all the things
 * @param any - marks of the cells that have met anything, shared by all layers
 * @returns the layers, those of one thing together
 */
export function softLayers(standing: readonly Standing[], any: Uint8Array): readonly Layer[] {
  return standing.flatMap((thing): Layer[] => {
    const screens = isHard(thing) || thing.screens.length === 0 ? [] : [thing.screens]
    return [...screens, ...thing.crowns].map((parts) => ({
      thing,
      parts,
      low: new Float32Array(any.length),
      high: new Float32Array(any.length),
      any,
    }))
  })
}

/**
 * Finds what a layer covers in one direction.
 *
 * @param layer - the layer, empty
 * @param looking - from where and in which direction
 */
export function fillLayer(layer: Layer, looking: Looking): void {
  if ('radiusM' in layer.parts) meetCrown(layer.parts, looking, layer)
  else for (const screen of layer.parts) meetScreen(screen, looking, layer)
}
