import type { Surface } from '#core/survey'
import type { GroundFacts } from '#core/terrain'
import type { Plan } from '#plan'
import type { Scene, SunOptions } from './sun-layers'

/** A grid that can be written out, in plain words. */
interface LayerWords {
  readonly name: string
  readonly unit: string
  /** Decimals written. */
  readonly decimals: number
  /** One sentence: what it is and how it comes about. */
  readonly method: string
  /** A key of data/sources.json. */
  readonly source: string
}

/** The ground of a plan, without all that follows from it. */
export interface GroundScene {
  readonly plan: Plan
  readonly surface: Surface
  /** Facts of the ground, each worked out when asked for. */
  readonly facts: GroundFacts
}

/** A layer that needs the whole findings: one value per cell of the surface's frame, read only inside the plot. */
interface FoundRow {
  values(scene: Scene, options: LayerOptions): ArrayLike<number>
}

/** A layer that needs the ground alone, and so is quick on large plots. */
interface DrawnRow {
  ofGround(scene: GroundScene, options: LayerOptions): ArrayLike<number>
}

/** A layer that looks in no direction. */
export type LayerRow = LayerWords & FoundRow

/** A layer of the ground alone that looks in no direction. */
export type GroundRow = LayerWords & DrawnRow

/** Any grid that can be written out. */
export type Layer = LayerWords &
  (FoundRow | DrawnRow) & {
    /** True when it looks in a direction that must be given. */
    readonly needsAzimuth: boolean
    /** True when it looks from a viewpoint that must be named. */
    readonly needsViewpoint: boolean
  }

/** What a person may ask of a layer. */
export interface LayerOptions extends SunOptions {
  /** Direction looked towards, clockwise from true north [°]. */
  readonly azimuthDeg?: number
  /** Radius of the window that a cell is compared with [cells]. */
  readonly radiusCells?: number
  /** Name or id of the viewpoint looked from. */
  readonly from?: string
}
