import type { Ring } from '#core/geometry'

/** Something that a person drew, as far as light needs it. Heights are above the ground at its foot. */
export interface Thing {
  readonly id: string
  readonly kind: string
  readonly name: string
  /** Outline, line or single point in plan [m]. */
  readonly ring: Ring
  /** Height, of a building with a ridge to its eaves [m]. */
  readonly heightM?: number | undefined
  /** Height of a building's ridge [m]; a flat roof when left out. */
  readonly ridgeM?: number | undefined
  /** Level of the ground at its foot [m]; that of the plot's nearest ground when left out. */
  readonly groundM?: number | undefined
  /** Height of a tree's lowest branches, and width of its crown [m]; usual shares of its height when left out. */
  readonly crownBaseM?: number | undefined
  readonly crownWidthM?: number | undefined
  readonly leaf?: 'deciduous' | 'evergreen' | undefined
  /** First and last month in leaf, 1 to 12. */
  readonly leafMonths?: { readonly from: number; readonly to: number } | undefined
  /** Share of direct light that comes through in leaf, or through a fence, and through bare branches, 0 to 1. */
  readonly leafyLight?: number | undefined
  readonly bareLight?: number | undefined
}

/** Level of the ground at a place, on or off the plot [m]. */
export type GroundLevel = (at: Ring[number]) => number
