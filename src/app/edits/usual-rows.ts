import type { ShadeTables } from '#core/shade'
import { monthNames } from '#core/units'

/** One usual figure as it is told, with the key of its source. */
export interface UsualRow {
  readonly what: string
  readonly figures: string
  readonly because: string
  readonly source: string
}

const drops = { deciduous: 'that drops its leaves', evergreen: 'that keeps its leaves' } as const
const percent = (share: number) => `${Math.round(share * 1000) / 10} %`
const asWritten = (kind: string) => `${kind.charAt(0).toUpperCase()}${kind.slice(1)}`

/** Everything that is taken of what stands in the light where nobody measured. */
export function usualRows({ things }: ShadeTables): UsualRow[] {
  const { kinds, light, crown, leafMonths } = things
  const leaves = kinds.flatMap(({ kind, leaf, note, source }) =>
    leaf ? [row({ what: asWritten(kind), figures: `one ${drops[leaf]}`, note, source })] : [],
  )
  const through = light.map(({ kind, leaf, leafyLight, bareLight, note, source }) =>
    row({
      what: `${asWritten(kind)} ${drops[leaf]}`,
      figures:
        leaf === 'evergreen'
          ? `${percent(leafyLight)} of direct light comes through`
          : `${percent(leafyLight)} of direct light comes through in leaf, ${percent(bareLight)} bare`,
      note,
      source,
    }),
  )
  return [
    ...leaves,
    ...through,
    row({
      ...crown,
      what: 'Crown of a tree',
      figures: `begins at ${percent(crown.baseShare)} of its height, is ${percent(crown.widthShare)} of it wide`,
    }),
    row({
      ...leafMonths,
      what: 'Time in leaf',
      figures: `${monthNames[leafMonths.from - 1] ?? ''} to ${monthNames[leafMonths.to - 1] ?? ''} in the north`,
    }),
  ]
}

interface Written {
  readonly what: string
  readonly figures: string
  readonly note?: string | undefined
  readonly source: string
}
const row = ({ what, figures, note, source }: Written): UsualRow => ({
  what,
  figures,
  because: note ?? '',
  source,
})
