import type { CoverKind } from '#core/cover'

/** What the person wants of a zone's planting. */
export interface PlantingWish {
  readonly cover: CoverKind
  readonly children: boolean
  readonly pets: boolean
  /** Least share of native plants in the mix, 0 to 1. */
  readonly nativeShare: number
  /** Tallest plant wanted [m]. */
  readonly heightLimitM?: number | undefined
  /** Ids of plants that the mix must hold; one barred by law, or not for this cover, is refused all the same. */
  readonly insist?: readonly string[] | undefined
  /** Ids of plants the person does not want. */
  readonly without?: readonly string[] | undefined
}
