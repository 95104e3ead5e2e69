import type { CoverKind } from '#core/cover'
import type { Plant } from './plant.schema'
import type { PlantFlags, Site } from './plants.types'

/** What the person asks of the planting, as far as one plant can answer. */
export interface MatchBrief {
  readonly children: boolean
  readonly pets: boolean
  /** What the zone is to be; a plant poisonous in hay is kept out of meadows. */
  readonly cover?: CoverKind | undefined
  /** Tallest plant wanted [m]. */
  readonly heightLimitM?: number | undefined
  /** Ids of plants the person does not want. */
  readonly without?: readonly string[] | undefined
}

/** One plant before one site, with what is known about both. */
export interface Meeting {
  readonly plant: Plant
  readonly site: Site
  readonly flags: PlantFlags
  readonly brief: MatchBrief
  readonly bindingClass: number
}
