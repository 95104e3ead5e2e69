import type { GridFrame } from '#core/geometry'
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

/** Where the ground lies and how clear its air is. */
export interface SunSite {
  /** Latitude [°], north positive, -90 to 90. */
  readonly latitudeDeg: number
  /** Height above the sea [m], -430 to 6000. */
  readonly elevationM: number
  /** Linke turbidity of the air [1], 1 (clean and dry) to 8 (very hazy); one for all months, or one each. */
  readonly linke: number | Twelve<number>
  /** Share of light that the ground throws back [1], 0 to 1. */
  readonly albedo: number
}

/** How one day is reckoned. */
export interface DayChoice extends SunSite {
  readonly linke: number
  /** Day of the year, 1 to 366. */
  readonly dayOfYear: number
  /** Longest time step [h], above 0 to 2; half an hour when left out. */
  readonly stepHours?: number
  /** Whether ground throws its shadow on other ground; true when left out. */
  readonly castShadows?: boolean
  /** Whether the skyline narrows the diffuse light, besides the cell's own tilt; true when left out. */
  readonly skyline?: boolean
}

/** One clear day, one value per cell. Per m² of SLOPE. */
export interface DayOnGround {
  /** Hours of direct sun [h]. */
  readonly sunHours: Float32Array
  /** Beam radiation [Wh/m² of slope]. */
  readonly beamWhPerM2: Float32Array
  /** Diffuse radiation from the sky [Wh/m² of slope]. */
  readonly diffuseWhPerM2: Float32Array
  /** Radiation reflected by the ground in front [Wh/m² of slope]. */
  readonly reflectedWhPerM2: Float32Array
}

/** Heights on a grid, as far as light needs them: part of a surface. */
export interface ShadingGround {
  readonly frame: GridFrame
  /** Level of each cell centre [m]; read only where `share` is above 0. */
  readonly levelM: Float64Array
  /** Part of each cell inside the plot, 0 to 1. */
  readonly share: Float64Array
}

/** How each cell is tilted: part of the terrain. */
export interface TiltedCells {
  /** Steepness [°], 0 to below 90. */
  readonly slopeDeg: Float64Array
  /** Direction faced, clockwise from true north [°]; -1 where level. */
  readonly aspectDeg: Float64Array
}
