import type { PlanPoint } from '#core/geometry'

/** Facts of the ground, one value per cell of the surface's frame; read only where the surface's share is above 0. */
export interface Terrain {
  /** Steepness [°], 0 to below 90 (Horn 1981). */
  readonly slopeDeg: Float64Array
  /** Direction the cell faces, clockwise from true north [°]; -1 where level. */
  readonly aspectDeg: Float64Array
  /** Level with hollows filled to their lip, so that water finds a way out [m]. */
  readonly filledM: Float64Array
  /** Plan area that drains through the cell, its own included, and the ground beyond the boundary as described [m²]. */
  readonly upslopeAreaM2: Float64Array
  /** Plan area off the plot that drains onto each cell at its edge [m²]; undefined when none does. */
  readonly inflowM2?: Float64Array | undefined
  /** Height above the place where the cell's water leaves the plot or stops [m]. */
  readonly heightAboveFootM: Float64Array
  /** Relative position on the slope, 0 (foot) to 1 (crest). */
  readonly position: Float64Array
  /** Curvature down the slope [1/m]: positive where it steepens downhill (convex, sheds), negative where it eases (concave, gathers). */
  readonly formDown: Float64Array
  /** Curvature across the slope [1/m]: positive on a nose (spreads water), negative in a hollow (gathers it). */
  readonly formAcross: Float64Array
  readonly section: Section
  /** For each cell, where its water goes next: used to hand water from zone to zone. */
  readonly flow: FlowShares
}

/** Multiple-flow shares: for cell i, the links from starts[i] to starts[i+1] say which cells receive which share (0 to 1). Shares of a cell add up to 1, or to 0 where water leaves the plot there. */
export interface FlowShares {
  readonly starts: Uint32Array
  readonly to: Uint32Array
  readonly share: Float64Array
  /** Cell indices from the highest down: a safe order for handing water on. */
  readonly order: Uint32Array
}

/** A cut through the ground from the top of the plot to its foot, the spine of every drawing. */
export interface Section {
  readonly from: PlanPoint
  readonly to: PlanPoint
  /** Plan length [m]. */
  readonly lengthM: number
  readonly stations: readonly SectionStation[]
}

export interface SectionStation extends PlanPoint {
  /** Plan distance from the top edge [m]. */
  readonly distanceM: number
  readonly levelM: number
  readonly slopeDeg: number
  /** Cell index under the station. */
  readonly cell: number
}
