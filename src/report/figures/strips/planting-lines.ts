import type { Axis } from '../../drawing/axis'
import { textWidthPx } from '../../drawing/text-width'
import { grouped } from '../../words/figures-in-words'
import type { PlantedLine, StripView } from './strip-view.types'
import { zoneStretches } from './zone-cells'

/** Layers from the tallest down. */
export const layerRows = [
  { layer: 'tree', name: 'trees' },
  { layer: 'shrub', name: 'shrubs' },
  { layer: 'ground', name: 'ground' },
  { layer: 'meadow', name: 'meadow' },
] as const

export const PLANTING_ROW_PX = 17
const TYPE_PX = 12
/** Air on each side of the words in a dimension line [px]. */
const AIR_PX = 5

/** A dimension line over a zone with what is planted of a layer. */
export interface DimensionLine {
  readonly key: string
  readonly fromPx: number
  readonly toPx: number
  readonly yPx: number
  readonly count: string
  /** Latin name, when one kind alone is planted and it fits. */
  readonly latin: string | undefined
  readonly rest: string
  readonly textPx: { readonly middle: number; readonly half: number }
}

/** Layers that any zone plants, in order. */
export function plantedLayers(view: StripView) {
  return layerRows.filter(({ layer }) =>
    view.zones.some((zone) => zone.planting.some((line) => line.layer === layer)),
  )
}

/** One dimension line per zone and layer, with the number of plants. */
export function dimensionLines(view: StripView, axis: Axis): DimensionLine[] {
  return plantedLayers(view).flatMap(({ layer }, at) =>
    zoneStretches(view, axis)
      .filter(({ main }) => main)
      .flatMap((stretch) => {
        const lines = stretch.zone.planting.filter((line) => line.layer === layer)
        if (lines.length === 0) return []
        const words = wordsFor(lines, stretch.widthPx - 26)
        const half = (words.widthPx + AIR_PX * 2) / 2
        return [
          {
            ...{ key: `${layer}-${stretch.key}`, ...words },
            fromPx: stretch.leftPx + 4,
            toPx: stretch.leftPx + stretch.widthPx - 4,
            yPx: (at + 0.5) * PLANTING_ROW_PX,
            textPx: { middle: stretch.middlePx, half },
          },
        ]
      }),
  )
}

function wordsFor(lines: readonly PlantedLine[], roomPx: number) {
  const count = amountWords(lines)
  const [only] = lines
  const wordings =
    lines.length === 1 && only
      ? [{ count, latin: only.latin, rest: '' }]
      : [{ count, latin: undefined, rest: ` of ${lines.length} kinds` }]
  const all = [...wordings, { count, latin: undefined, rest: '' }].map((one) => ({
    ...one,
    widthPx:
      textWidthPx(`${one.count}${one.rest}`, 'sansBold', TYPE_PX) +
      (one.latin ? textWidthPx(` ${one.latin}`, 'serifItalic', 13) : 0),
  }))
  return (
    all.find(({ widthPx }) => widthPx <= roomPx) ?? { count, latin: undefined, rest: '', widthPx: roomPx }
  )
}

/** Plants, and grams of seed where a meadow is sown. */
export function amountWords(lines: readonly PlantedLine[]): string {
  const plants = lines.reduce((sum, line) => sum + line.count, 0)
  const seedG = lines.reduce((sum, line) => sum + (line.seedG ?? 0), 0)
  return [plants > 0 ? grouped(plants) : '', seedG > 0 ? `${grouped(seedG)} g seed` : '']
    .filter(Boolean)
    .join(', ')
}
