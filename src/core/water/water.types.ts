import type { Account, Twelve } from '#core/units'
import type { SoilProperties } from '#core/soil'
import type { GroundBeyond, WaterCover } from './water-tables.schema'

/** A piece of the slope that takes water in and hands it on. */
export interface WaterUnit {
  readonly id: string
  readonly planAreaM2: number
  readonly slopeDeg: number
  /** Length of the unit down the slope [m plan]. */
  readonly lengthM: number
  readonly soil: SoilProperties
  readonly cover: WaterCover
  /** The stretch of the boundary beyond which it lies; undefined on the plot and on ground above it of the same kind. */
  readonly beyond?: EdgeStretch
  /** Mean level of the unit, to hand water from high to low [m]. */
  readonly levelM: number
  /** FAO-56 reference evapotranspiration on this slope, per m² of plan [mm a month]. */
  readonly referenceEtMm: Twelve<number>
  /** Where its surface and lateral water goes: share 0 to 1 by receiving unit; the rest leaves the plot. */
  readonly handsOn: readonly { readonly to: string; readonly share: number }[]
}

/** The edge of the plot over which ground beyond would shed onto one unit. */
export interface UnitEdge {
  readonly unitId: string
  /** Width of it across the fall [m]. */
  readonly enteringM: number
  /** The parts of it that the person described. */
  readonly stretches: readonly EdgeStretch[]
}

/** What lies beyond a part of an edge. */
export interface EdgeStretch {
  readonly id: string
  readonly name: string
  /** Undefined for ground that sheds nothing onto the plot, such as a watercourse. */
  readonly what: GroundBeyond | undefined
  /** Width of it across the fall [m]. */
  readonly widthM: number
  /** How far the ground beyond rises and sheds [m plan], 0 or more. */
  readonly uphillM: number
}

/** What the sky gives and takes on level open ground. */
export interface WaterClimate {
  /** Mean rain [mm a month]. Snow is counted as rain on the day it falls. */
  readonly rainMm: Twelve<number>
  /** FAO-56 reference evapotranspiration on level open ground [mm a month]. */
  readonly referenceEtMm: Twelve<number>
}

/** One month of a unit's balance, all depths over the unit's PLAN area [mm a month]. */
export interface WaterMonth {
  readonly rainMm: number
  /** Surface water from units above. */
  readonly runOnMm: number
  /** Water through the soil from units above. */
  readonly lateralInMm: number
  /** FAO-56 reference evapotranspiration on level open ground. */
  readonly referenceEtMm: number
  /** What the cover would use on this slope with water enough. */
  readonly demandMm: number
  readonly actualEtMm: number
  /** Runs off over the surface. */
  readonly runoffMm: number
  readonly lateralOutMm: number
  /** Drains downward below the roots. */
  readonly drainageMm: number
  /** Change of water stored in the rooting depth over the month. */
  readonly storedChangeMm: number
  /** Water that plants can take, at the month's end. */
  readonly availableMm: number
  /** Mean of available water over what the soil can hold for plants, 0 to 1 and more when above field capacity; each day between its wettest and its end. */
  readonly fullness: number
  /** Days of the month when the soil is too dry for plants to keep up (stress coefficient below 1) [d]. */
  readonly dryDays: number
  /** Days when the root zone stands above field capacity [d]. */
  readonly wetDays: number
  /** Days when the roots are short of air: less than a tenth of the soil's volume is air [d]. */
  readonly airlessDays: number
}

/** A usual year of one unit. */
export interface WaterYear {
  readonly id: string
  readonly months: Twelve<WaterMonth>
  /** The year's water of the unit, books to 0: in, out and stored [mm a year]. */
  readonly account: Account
}

/** The whole plot's year; volumes in m³. */
export interface PlotWater {
  readonly units: readonly WaterYear[]
  /** Rain, water from the ground above, used by plants, ran off the plot, drained below, left sideways, stored: books to 0 [m³ a year]. */
  readonly account: Account
}
