import type { TextureClass } from './soil.schema'

/** Soil as water and roots find it, derived from one sample. */
export interface SoilProperties {
  readonly sampleId: string
  readonly textureClass: TextureClass
  readonly sandPercent: number
  readonly siltPercent: number
  readonly clayPercent: number
  readonly organicPercent: number
  /** Water held at wilting point, field capacity and saturation, of the fine earth [m³/m³]. */
  readonly wiltingPoint: number
  readonly fieldCapacity: number
  readonly saturation: number
  /** Saturated conductivity [mm/h]. */
  readonly conductivityMmPerH: number
  readonly depthM: number
  readonly stonesPercent: number
  /** Water that plants can take from the whole rooting depth, stones deducted [mm]. */
  readonly availableWaterMm: number
  /** Water the rooting depth can hold above field capacity until it drains, stones deducted [mm]. */
  readonly drainableMm: number
  /** Hydrologic soil group of NEH 630. */
  readonly hydrologicGroup: 'A' | 'B' | 'C' | 'D'
  readonly ph: number | undefined
}
