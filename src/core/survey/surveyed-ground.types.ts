import type { GridFrame, PlanPoint, Ring, Tin } from '#core/geometry'
import type { SurfaceNote } from './surface.types'
import type { Wall } from './walls'

/** What a survey says of the ground before a grid is laid over it. */
export interface SurveyedGround {
  /** Outline of what was measured; the plot's boundary when none is drawn. */
  readonly outline: Ring
  /** Convex outline of it, which a drawn boundary is held against. */
  readonly hull: Ring
  /** Gaps in what was measured; the plot's holes when neither boundary nor holes are drawn. */
  readonly gaps: readonly Ring[]
  /** Mean distance between measured points [m]; undefined when the ground follows one rule everywhere. */
  readonly spacingM: number | undefined
  /** Highest and lowest measured level [m]. */
  readonly highestM: number
  readonly lowestM: number
  readonly tin: Tin
  /** Level over any place [m]; undefined when levels must be read from the triangles. */
  readonly levelAt: ((point: PlanPoint) => number) | undefined
  /** Walls, at whose line the ground steps. */
  readonly walls: readonly Wall[]
  /** What was changed or doubted on the way. */
  readonly notes: readonly SurfaceNote[]
}

/** A level at a plan distance from the top edge. */
export interface PlanStation {
  readonly planM: number
  readonly levelM: number
}

/** A grid laid over the plot. */
export interface LaidGrid {
  readonly frame: GridFrame
  readonly share: Float64Array
  readonly boundary: Ring
  readonly holes: readonly Ring[]
  /** What was changed in boundary and holes. */
  readonly notes: readonly SurfaceNote[]
}
