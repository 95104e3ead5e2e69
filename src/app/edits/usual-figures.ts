import type { ShadeTables } from '#core/shade'
import { northernTwin, type Month } from '#core/units'
import type { Obstacle } from '#plan'

/** What is taken of a thing where nobody measured, each with the key of its source. */
export interface UsualFigures {
  readonly crownBaseM: Figure | undefined
  readonly crownWidthM: Figure | undefined
  readonly leaf: Taken<NonNullable<Obstacle['leaf']>> | undefined
  readonly leafMonths: Taken<NonNullable<Obstacle['leafMonths']>> | undefined
  readonly leafyLight: Figure | undefined
  readonly bareLight: Figure | undefined
}

interface Taken<Value> {
  readonly value: Value
  readonly source: string
  readonly note: string | undefined
}
type Figure = Taken<number>

/** Corners that the outline of a crown has at least [count]. */
const LEAST_CORNERS = 3

/** The usual figures of a thing: of its kind, its height and its side of the equator. */
export function usualFigures(thing: Obstacle, { things }: ShadeTables, latitudeDeg: number): UsualFigures {
  const kind = things.kinds.find((row) => row.kind === thing.kind)
  const leaf = thing.leaf ?? kind?.leaf
  const light = things.light.find((row) => row.kind === thing.kind && row.leaf === leaf)
  return {
    ...crownOf(thing, things),
    leaf: kind?.leaf && taken(kind, kind.leaf),
    leafMonths: kind?.leaf && taken(things.leafMonths, monthsThere(things.leafMonths, latitudeDeg)),
    leafyLight: leafyOf(kind, light),
    bareLight: light && taken(light, light.bareLight),
  }
}

/** A crown is usual for its tree’s height; one that was drawn as an outline is as wide as that. */
function crownOf({ kind, heightM, ring }: Obstacle, { crown }: Things) {
  if (kind !== 'tree' || heightM === undefined) return { crownBaseM: undefined, crownWidthM: undefined }
  const { baseShare, widthShare } = crown
  return {
    crownBaseM: taken(crown, rounded(baseShare * heightM)),
    crownWidthM: ring.length < LEAST_CORNERS ? taken(crown, rounded(widthShare * heightM)) : undefined,
  }
}

type Things = ShadeTables['things']

/** What has leaves lets through what its leaves do; what else stands lets nothing through. */
function leafyOf(
  kind: Things['kinds'][number] | undefined,
  light: Things['light'][number] | undefined,
): Figure | undefined {
  if (light) return taken(light, light.leafyLight)
  return kind && taken(kind, 0)
}

const taken = <Value>(
  row: { readonly source: string; readonly note?: string | undefined },
  value: Value,
) => ({
  value,
  source: row.source,
  note: row.note,
})

const monthsThere = ({ from, to }: { readonly from: number; readonly to: number }, latitudeDeg: number) => ({
  from: northernTwin((from - 1) as Month, latitudeDeg) + 1,
  to: northernTwin((to - 1) as Month, latitudeDeg) + 1,
})

const rounded = (metres: number) => Math.round(metres * 10) / 10
