import type { Surface } from '#core/survey'
import type { Terrain } from '#core/terrain'
import type { Twelve } from '#core/units'

/** What zoning reads: ground, terrain and sun, one value per cell of the surface's frame. */
export interface ZoningInput {
  readonly surface: Surface
  readonly terrain: Terrain
  /** Hours of direct sun on each month's representative day [h]. */
  readonly sunHours: Twelve<Float32Array>
  /** Radiation over open level ground, per m² of PLAN, each month [ratio]. */
  readonly sunRatio: Twelve<Float32Array>
  /** How much each month counts in the growing season, together 1. */
  readonly season: Twelve<number>
}
