import type { Twelve } from '#core/units'

/** Sun on every cell for the twelve representative days, terrain shading itself; clear sky. Per m² of SLOPE. */
export interface SunOnGround {
  /** Hours of direct sun on the representative day of each month, one value per cell [h]. */
  readonly sunHours: Twelve<Float32Array>
  /** Clear-sky beam radiation on the slope [Wh/m² of slope and day]. */
  readonly beamWhPerM2: Twelve<Float32Array>
  /** Clear-sky diffuse radiation on the slope [Wh/m² of slope and day]. */
  readonly diffuseWhPerM2: Twelve<Float32Array>
  /** Clear-sky radiation reflected by the ground in front [Wh/m² of slope and day]. */
  readonly reflectedWhPerM2: Twelve<Float32Array>
  /** Share of the sky hemisphere that the cell sees, 0 to 1. */
  readonly skyView: Float32Array
  /** The same day on open level ground at this latitude. */
  readonly openLevel: Twelve<OpenLevelDay>
}

/** A clear representative day on open level ground. */
export interface OpenLevelDay {
  readonly dayOfYear: number
  readonly sunHours: number
  readonly beamWhPerM2: number
  readonly diffuseWhPerM2: number
}
