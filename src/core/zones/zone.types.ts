import type { Ring } from '#core/geometry'
import type { Twelve } from '#core/units'

/** Bands of position down the slope. */
export type SlopeBand = 'crest' | 'upper' | 'mid' | 'lower' | 'foot'

/** A part of the plot that behaves alike, with its measured facts. */
export interface ZoneFacts {
  readonly id: string
  /** Letter on every drawing: A at the top. */
  readonly letter: string
  readonly name: string
  readonly ring: Ring
  readonly band: SlopeBand
  readonly planAreaM2: number
  readonly slopeAreaM2: number
  readonly slopeDegMean: number
  /** Nine tenths of the zone are no steeper [°]: what a machine or a person must cope with. */
  readonly slopeDegSteep: number
  /** Direction the zone faces, clockwise from true north [°]; undefined on level ground. */
  readonly aspectDeg: number | undefined
  /** Mean position, 0 (foot) to 1 (crest). */
  readonly position: number
  /** Mean curvature down and across the slope [1/m]; signs as in Terrain. */
  readonly formDown: number
  readonly formAcross: number
  /** Plan area draining through the zone's upper edge from above, inside the plot [m²]. */
  readonly upslopeAreaM2: number
  readonly levelM: { readonly highest: number; readonly lowest: number }
  /** Length down the slope [m plan]. */
  readonly lengthM: number
  /** Hours of direct sun on each month's representative day, clear sky, mean of the zone [h]. */
  readonly sunHours: Twelve<number>
  /** Radiation over open level ground, per m² of PLAN, each month [ratio]. */
  readonly sunRatio: Twelve<number>
  /** Radiation over open level ground, growing season, per m² of SLOPE [ratio]. */
  readonly seasonSunRatio: number
  /** Where the section crosses the zone [m from the top edge]; empty when it does not. */
  readonly spans: readonly { readonly fromM: number; readonly toM: number }[]
  /** Share of what leaves the zone that each other zone receives, 0 to 1; the rest leaves the plot. */
  readonly handsOn: readonly { readonly to: string; readonly share: number }[]
}

/** Zones with the cells they hold. */
export interface Zoning {
  readonly zones: readonly ZoneFacts[]
  /** Zone index of each cell, -1 outside. */
  readonly zoneOfCell: Int16Array
  /** True when the outlines were suggested, not drawn by the person. */
  readonly suggested: boolean
}
