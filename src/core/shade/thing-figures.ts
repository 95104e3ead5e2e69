import { outlineWidthM } from './crown-outline'
import type { ShadeTables } from './shade-tables.schema'
import type { Thing } from './standing-thing.types'

/** What a thing is taken to be: what the person gave, else what is usual of its kind. */
export interface ThingFigures {
  /** Height of the lowest branches, and width of the crown [m]; undefined of what has no crown or no height. */
  readonly crownBaseM: number | undefined
  readonly crownWidthM: number | undefined
  /** Undefined of kinds without leaves. */
  readonly leaf: 'deciduous' | 'evergreen' | undefined
  /** Share of direct light that comes through in leaf, or all year, 0 to 1. */
  readonly leafyLight: number
  /** The same through bare branches; undefined of what has leaves all year or none. */
  readonly bareLight: number | undefined
}

/**
 * What a thing that stands is taken to be.
 *
 * @param thing - the thing, with what the person knows of it
 * @param tables - what is usual of each kind
 * @returns its figures; undefined of kinds that lie flat
 * @throws RangeError when a table has no row for a kind that has leaves
 */
export function thingFigures(thing: Thing, tables: ShadeTables): ThingFigures | undefined {
  const row = tables.things.kinds.find(({ kind }) => kind === thing.kind)
  if (row === undefined) return undefined
  const crown = row.shape === 'crown' ? crownFigures(thing, tables) : noCrown
  if (row.leaf === undefined)
    return { ...crown, leaf: undefined, leafyLight: thing.leafyLight ?? 0, bareLight: undefined }
  const leaf = thing.leaf ?? row.leaf
  const light = tables.things.light.find((one) => one.kind === thing.kind && one.leaf === leaf)
  if (light === undefined)
    throw new RangeError(`thingFigures: no light through a ${leaf} ${thing.kind} in the table`)
  return {
    ...crown,
    leaf,
    leafyLight: thing.leafyLight ?? light.leafyLight,
    bareLight: leaf === 'evergreen' ? undefined : (thing.bareLight ?? light.bareLight),
  }
}

const noCrown = { crownBaseM: undefined, crownWidthM: undefined }

function crownFigures(
  { heightM, crownBaseM, crownWidthM, ring }: Thing,
  { things: { crown } }: ShadeTables,
): Pick<ThingFigures, 'crownBaseM' | 'crownWidthM'> {
  const share = (of: number) => (heightM === undefined ? undefined : of * heightM)
  return {
    crownBaseM: crownBaseM ?? share(crown.baseShare),
    crownWidthM: crownWidthM ?? outlineWidthM(ring) ?? share(crown.widthShare),
  }
}
