import { eachMonth, months, type Twelve } from '#core/units'
import type { CellPlanes } from './cell-planes'
import type { Standing } from './shade.types'
import { skyAbove } from './sky-view'
import { fillLayer, softLayers, type Layer } from './things-layers'
import { addSpan, cutSpans, emptySpans, throughStretch, type Spans } from './things-overlap'
import type { Looking } from './things-rises'

/** Share of the sky that each cell sees, weighted by the cosine to its own plane [1]. */
export interface SkyViews {
  /** By each month's leaves. */
  readonly months: Twelve<Float32Array>
  /** Mean of the twelve months. */
  readonly mean: Float32Array
}

/** The sky as things leave it that hide only a part: crowns, and what light comes through. */
export interface SoftSky {
  /** Takes what they hide in one direction above a skyline, rise over distance [m/m]. */
  readonly take: (looking: Looking, skyline: Float32Array) => void
  /** What they leave of the sky that was summed over a number of directions. */
  readonly leave: (view: Float32Array, directions: number) => SkyViews
}

/**
 * Makes ready the things that hide only a part of the sky.
 *
 * @param standing - all the things; screens that hide everything below their top are left to the skyline
 * @param planes - the cells as planes
 * @returns takes their part of the sky, direction by direction
 */
export function softSky(standing: readonly Standing[], planes: CellPlanes): SoftSky {
  const cells = planes.up.length
  const met = new Uint8Array(cells)
  const layers = softLayers(standing, met)
  const { states, stateOf } = leafStates(layers)
  const lost = states.map(() => new Float32Array(cells))
  const thingOf = Int32Array.from(layers, ({ thing }) => standing.indexOf(thing))
  const spans = emptySpans(layers.length)
  return {
    take(looking, skyline) {
      const { east, north } = looking.look
      for (const layer of layers) fillLayer(layer, looking)
      for (let cell = 0; cell < cells; cell += 1) {
        if (met[cell] === 0) continue
        met[cell] = 0
        const upright = planes.up[cell]!
        const outward = planes.east[cell]! * east + planes.north[cell]! * north
        gather(spans, layers, cell, Math.max(skyline[cell]!, -outward / upright))
        const ends = upright > 0 ? cutSpans(spans) : 0
        let above = ends > 0 ? skyAbove(spans.ends[0]!, upright, outward) : 0
        for (let end = 1; end < ends; end += 1) {
          const below = above
          above = skyAbove(spans.ends[end]!, upright, outward)
          for (let state = 0; state < states.length; state += 1)
            lost[state]![cell]! += (below - above) * (1 - throughStretch(spans, states[state]!, thingOf, end))
        }
      }
    },
    leave: (view, directions) => leftOf(view, directions, lost, stateOf),
  }
}

// What comes through each layer, month by month; months alike share one state.
function leafStates(layers: readonly Layer[]) {
  const ofMonths = months.map((month) => layers.map(({ thing }) => thing.through[month]))
  const keys = ofMonths.map((each) => each.join())
  const distinct = [...new Set(keys)]
  return {
    states: distinct.map((key) => Float64Array.from(ofMonths[keys.indexOf(key)]!)),
    stateOf: eachMonth((month) => distinct.indexOf(keys[month]!)),
  }
}

// Takes the spans of one cell out of the layers, as far as they lie above what hides the sky anyway.
function gather(spans: Spans, layers: readonly Layer[], cell: number, least: number): void {
  spans.count = 0
  for (let layer = 0; layer < layers.length; layer += 1) {
    const { low, high } = layers[layer]!
    const top = high[cell]!
    high[cell] = 0
    if (top > least) addSpan(spans, layer, Math.max(low[cell]!, least), top)
  }
}

function leftOf(
  view: Float32Array,
  directions: number,
  lost: readonly Float32Array[],
  stateOf: Twelve<number>,
): SkyViews {
  const left = lost.map((loss) =>
    view.map((seen, cell) => Math.min(1, Math.max(0, seen - loss[cell]!) / directions)),
  )
  const mean = new Float32Array(view.length)
  for (const month of months) {
    const here = left[stateOf[month]]!
    for (let cell = 0; cell < mean.length; cell += 1) mean[cell]! += here[cell]! / months.length
  }
  return { months: eachMonth((month) => left[stateOf[month]]!), mean }
}
