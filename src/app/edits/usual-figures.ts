import { thingFigures, type ShadeTables } from '#core/shade'
import { northernTwin, type Month } from '#core/units'
import type { Obstacle } from '#plan'

/** What is taken of a thing where nobody measured. */
export interface UsualFigures {
  readonly crownBaseM: number | undefined
  readonly crownWidthM: number | undefined
  readonly leaf: Obstacle['leaf']
  readonly leafMonths: NonNullable<Obstacle['leafMonths']>
  readonly leafyLight: number | undefined
  readonly bareLight: number | undefined
}

/** The usual figures of a thing: of its kind and leaves, its height or outline, and its side of the equator. */
export function usualFigures(thing: Obstacle, tables: ShadeTables, latitudeDeg: number): UsualFigures {
  const { id, kind, name, ring, heightM, leaf } = thing
  const taken = thingFigures({ id, kind, name, ring, heightM, leaf }, tables)
  return {
    crownBaseM: rounded(taken?.crownBaseM),
    crownWidthM: rounded(taken?.crownWidthM),
    leaf: tables.things.kinds.find((row) => row.kind === kind)?.leaf,
    leafMonths: monthsThere(tables.things.leafMonths, latitudeDeg),
    leafyLight: taken?.leafyLight,
    bareLight: taken?.bareLight,
  }
}

const monthsThere = ({ from, to }: { readonly from: number; readonly to: number }, latitudeDeg: number) => ({
  from: northernTwin((from - 1) as Month, latitudeDeg) + 1,
  to: northernTwin((to - 1) as Month, latitudeDeg) + 1,
})

const rounded = (metres: number | undefined) =>
  metres === undefined ? undefined : Math.round(metres * 10) / 10
