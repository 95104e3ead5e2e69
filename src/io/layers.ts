import { accuracyRows } from './accuracy-layers'
import { aroundRows, seenRow } from './around-layers'
import { groundRows } from './ground-layers'
import type { Layer } from './layer.types'
import { horizonRow, lightRow } from './moment-layers'
import { dayRows, yearRows } from './sun-layers'
import { trialRow } from './trial-layers'
import { zoneRows } from './zone-layers'

/** Every grid that can be written out. */
export const layers: readonly Layer[] = [
  ...groundRows,
  ...aroundRows,
  ...accuracyRows,
  ...dayRows,
  ...yearRows,
  lightRow,
  horizonRow,
  trialRow,
  seenRow,
  ...zoneRows,
].map((row) => ({ takes: [], needs: [], ...row }))

/** A layer's values in rows for JSON: null outside the plot. */
export function cellsOf(
  values: ArrayLike<number>,
  share: Float64Array,
  decimals: number,
): readonly (number | null)[] {
  return Array.from(share, (part, cell) =>
    part > 0 ? Number((values[cell] ?? 0).toFixed(decimals)) + 0 : null,
  )
}
