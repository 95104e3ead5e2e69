import type { Surface } from '#core/survey'
import type { GroundFacts } from '#core/terrain'
import type { Findings, Plan } from '#plan'
import type { PlotLight, SunDayOptions } from './plot-light'

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

/** The ground of a plan and the light on it, without all that follows from them. */
export interface GroundScene {
  readonly plan: Plan
  readonly surface: Surface
  /** Facts of the ground, each worked out when asked for. */
  readonly facts: GroundFacts
  /** The light on it, worked out when asked for. */
  readonly light: PlotLight
}

/** A plan and what follows from it. */
export interface Scene {
  readonly plan: Plan
  readonly findings: Findings
}

/** A layer that needs the whole findings: one value per cell of the surface's frame, read only inside the plot. */
interface FoundRow {
  values(scene: Scene, options: LayerOptions): ArrayLike<number>
}

/** A layer that needs the ground alone, and so is quick on large plots. */
interface DrawnRow {
  ofGround(scene: GroundScene, options: LayerOptions): ArrayLike<number>
}

/** What may be asked of a layer, and what must be told. */
interface Asking {
  /** Entries of the options that it heeds; none when left out. */
  readonly takes?: readonly LayerOption[]
  /** Those of them without which it cannot be drawn; none when left out. */
  readonly needs?: readonly LayerOption[]
}

/** A layer of the whole findings. */
export type LayerRow = LayerWords & Asking & FoundRow

/** A layer of the ground alone. */
export type GroundRow = LayerWords & Asking & DrawnRow

/** Any grid that can be written out. */
export type Layer = LayerWords & Required<Asking> & (FoundRow | DrawnRow)

/** What a person may ask of a layer. */
export interface LayerOptions extends SunDayOptions {
  /** Direction looked towards, clockwise from true north [°]. */
  readonly azimuthDeg?: number
  /** Whether what stands there and far hills count besides the ground. */
  readonly withThings?: boolean
  /** Radius of the window that a cell is compared with [cells]. */
  readonly radiusCells?: number
  /** Name or id of the viewpoint looked from. */
  readonly from?: string
  /** Time by the sun [h], 0 to 24, 12 when it is highest. */
  readonly solarHour?: number
  /** Whether energy is given per m² of plan instead of slope. */
  readonly perPlan?: boolean
  /** Name or id of a trial. */
  readonly trial?: string
}

/** Name of something that may be asked of a layer. */
export type LayerOption = keyof LayerOptions
