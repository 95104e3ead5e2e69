import type { Scene, SunOptions } from './sun-layers'

/** A grid that can be written out, in plain words. */
export interface Layer {
  readonly name: string
  readonly unit: string
  /** Decimals written. */
  readonly decimals: number
  /** One sentence: what it is and how it comes about. */
  readonly method: string
  /** A key of data/sources.json. */
  readonly source: string
  /** True when it looks in a direction that must be given. */
  readonly needsAzimuth: boolean
  /** One value per cell of the surface's frame; read only inside the plot. */
  values(scene: Scene, options: LayerOptions): ArrayLike<number>
}

/** What a person may ask of a layer. */
export interface LayerOptions extends SunOptions {
  /** Direction looked towards, clockwise from true north [°]. */
  readonly azimuthDeg?: number
}

/** A layer that looks in no direction. */
export type LayerRow = Pick<Layer, 'name' | 'unit' | 'decimals' | 'method' | 'source' | 'values'>
