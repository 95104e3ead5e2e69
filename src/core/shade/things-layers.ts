import type { Crown, Screen, Standing } from './shade.types'
import { isHard } from './things-parts'
import { crownRises, screenRises, type Looking } from './things-rises'

/** What a thing covers of one direction, seen from each cell: all its screens together, or one of its crowns. */
export interface Layer {
  readonly thing: Standing
  readonly parts: readonly Screen[] | Crown
  /** Lowest and highest rise over distance [m/m]; the highest is 0 where there is nothing. */
  readonly low: Float32Array
  readonly high: Float32Array
}

/**
 * The layers of things that hide only a part of the sky: all crowns, and screens through which light comes.
 *
 * @param standing - all the things
 * @param cells - number of cells [count]
 * @returns the layers, those of one thing together
 */
export function softLayers(standing: readonly Standing[], cells: number): readonly Layer[] {
  return standing.flatMap((thing): Layer[] => {
    const screens = isHard(thing) || thing.screens.length === 0 ? [] : [thing.screens]
    return [...screens, ...thing.crowns].map((parts) => ({
      thing,
      parts,
      low: new Float32Array(cells),
      high: new Float32Array(cells),
    }))
  })
}

/**
 * Finds what a layer covers in one direction.
 *
 * @param layer - the layer, empty
 * @param looking - from where and in which direction
 * @param skyline - rise over distance below which nothing counts, for each cell [m/m]
 * @param touch - told of every cell that it covers something for
 */
export function fillLayer(
  layer: Layer,
  looking: Looking,
  skyline: Float32Array,
  touch: (cell: number) => void,
): void {
  const { parts, low, high } = layer
  const tell = (cell: number, from: number, to: number) => {
    if (!(to > skyline[cell]! && to > high[cell]!)) return
    low[cell] = from
    high[cell] = to
    touch(cell)
  }
  if ('radiusM' in parts) crownRises(parts, looking, tell)
  else for (const screen of parts) screenRises(screen, looking, (cell, to) => tell(cell, 0, to))
}
