import type { GridFrame, PlanPoint } from '#core/geometry'
import type { SunDay } from '#core/sun'
import type { Twelve } from '#core/units'

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

/** An upright face that light does not pass below its top: of a wall, a house, a fence, a hedge, a ridge. */
export interface Screen {
  readonly from: PlanPoint
  readonly to: PlanPoint
  /** Level of its top at either end [m], straight between. */
  readonly topFromM: number
  readonly topToM: number
}

/** A crown: an egg standing upright, round in plan. Light passes below it. */
export interface Crown {
  readonly at: PlanPoint
  readonly radiusM: number
  /** Level of its lowest and its highest point [m]. */
  readonly baseM: number
  readonly topM: number
}

/** One thing that stands in the light, on or beside the plot. */
export interface Standing {
  readonly id: string
  readonly name: string
  readonly screens: readonly Screen[]
  readonly crowns: readonly Crown[]
  /** Share of direct light that comes through it, month by month, 0 (none) to 1. */
  readonly through: Twelve<number>
}

/** A place of the skyline far away, of hills or buildings too far to stand on the plan. */
export interface FarPoint {
  /** Direction, clockwise from true north [°], 0 to below 360. */
  readonly azimuthDeg: number
  /** Height of the skyline above the horizontal [°], 0 to below 90. */
  readonly angleDeg: number
}

/** Everything that can take the sun away. */
export interface Shading {
  readonly ground: ShadingGround
  readonly standing: readonly Standing[]
  /** The far skyline all around, straight between its points; empty for an open horizon. */
  readonly far: readonly FarPoint[]
}

/** How one clear day is reckoned. */
export interface DayChoice extends SunDay {
  /** Whether anything throws its shadow on the cells; true when left out. */
  readonly castShadows?: boolean
  /** Whether the skyline narrows the diffuse light, besides the cell's own tilt; true when left out. */
  readonly skyline?: boolean
}

/** One day, one value per cell. Per m² of SLOPE. */
export interface DayOnGround {
  /** Hours of direct sun, each counted by the share of light that gets through [h]. */
  readonly sunHours: Float32Array
  /** Beam radiation [Wh/m² of slope]; under a usual sky with the bright ring around the sun. */
  readonly beamWhPerM2: Float32Array
  /** Diffuse radiation from the sky [Wh/m² of slope]. */
  readonly diffuseWhPerM2: Float32Array
  /** Radiation reflected by the ground in front [Wh/m² of slope]. */
  readonly reflectedWhPerM2: Float32Array
}

/** Sun on every cell for the twelve representative days. Radiation is per m² of SLOPE. */
export interface SunOnGround {
  /** Hours of direct sun on a clear day, each counted by the share of light that gets through [h]. */
  readonly sunHours: Twelve<Float32Array>
  /** The part of them before the sun is highest [h]. */
  readonly morningHours: Twelve<Float32Array>
  /** Hours on the clock in which the sun comes through leaves or branches [h]. */
  readonly dappledHours: Twelve<Float32Array>
  /** Radiation under the usual sky of the month: direct, from the sky and reflected [Wh/m² of slope and day]. */
  readonly usualWhPerM2: Twelve<Float32Array>
  /** Share of the sky that the cell sees, weighted by the cosine to its own plane, mean of the twelve months' leaves, 0 to 1. */
  readonly skyView: Float32Array
  /** The same days on open level ground at this latitude. */
  readonly openLevel: Twelve<OpenLevelDay>
}

/** A representative day on open level ground. */
export interface OpenLevelDay {
  readonly dayOfYear: number
  /** Hours of direct sun on a clear day [h]. */
  readonly sunHours: number
  /** Beam and diffuse light of a clear day [Wh/m²]. */
  readonly beamWhPerM2: number
  readonly diffuseWhPerM2: number
  /** Radiation under the usual sky of the month [Wh/m²]. */
  readonly usualWhPerM2: number
}

/** What becomes of the sun that open level ground would have. */
export interface SunTaker {
  readonly what: 'own-slope' | 'ground' | 'far' | 'thing' | 'several'
  /** The thing, where it is one. */
  readonly thingId: string | undefined
  readonly name: string
  /** Hours of direct sun that it alone takes on each month's representative day [h]; negative where it adds some. */
  readonly hours: Twelve<number>
}

/** Days of the year without direct sun, where the sun leaves a place in winter. Day numbers count from 1 January. */
export type DarkSpell =
  | { readonly kind: 'none' }
  | { readonly kind: 'always' }
  | {
      readonly kind: 'spell'
      /** Last day with sun before the longest spell without it, and first day after it, 1 to 365. */
      readonly lastDay: number
      readonly firstDay: number
      /** Length of the spell [d]. */
      readonly days: number
    }

/** Sun of one zone, means of its cells by plan area. */
export interface ZoneSun {
  readonly sunHours: Twelve<number>
  readonly morningHours: Twelve<number>
  readonly dappledHours: Twelve<number>
  /** Radiation under the usual sky [Wh/m² of slope and day]. */
  readonly usualWhPerM2: Twelve<number>
  /** Share of the sky seen, 0 to 1. */
  readonly skyView: number
  /** The account: hours on open level ground, less what each taker takes, is `sunHours`. */
  readonly openHours: Twelve<number>
  readonly takers: readonly SunTaker[]
  /** Share of the zone's ground in the sun at the middle of each hour by the sun, 0 to 23, 0 to 1; crowns counted by what comes through. */
  readonly litShares: Twelve<readonly number[]>
  readonly lightClass: LightClassName
  /** Where its winter darkness is read: the cell nearest to its middle. */
  readonly middle: PlanPoint
  readonly dark: DarkSpell
  /** Heat load of its slope and aspect in the open [MJ/cm² a year]; undefined beyond 60° of latitude. */
  readonly heatLoad: number | undefined
  /** The same after the share of the year's usual radiation that shade leaves [MJ/cm² a year]. */
  readonly heatLoadShaded: number | undefined
}

export type LightClassName = 'full-sun' | 'part-shade' | 'dappled' | 'shade' | 'deep-shade'

/** The sky from one place, all around, one value per whole degree of azimuth from north clockwise. */
export interface PlaceSky {
  readonly at: PlanPoint
  readonly levelM: number
  /** Slope and aspect of the cell it stands on [°]; aspect -1 where level. */
  readonly slopeDeg: number
  readonly aspectDeg: number
  /** Height of the plot's own ground [°], 0 where all is lower. */
  readonly groundDeg: Float32Array
  /** Height of the far skyline [°]. */
  readonly farDeg: Float32Array
  /** What stands in the light: the lowest and highest angle it covers [°], NaN where it does not stand. */
  readonly things: readonly {
    readonly id: string
    readonly name: string
    readonly lowDeg: Float32Array
    readonly highDeg: Float32Array
    readonly through: Twelve<number>
  }[]
}

/** Sun at one place on one clear day. */
export interface PlaceDay {
  readonly dayOfYear: number
  /** Times of the sun with light on the place [h by the sun, 12 when it is highest], in order. */
  readonly spells: readonly { readonly fromH: number; readonly toH: number; readonly through: number }[]
  /** Hours of direct sun, counted by the share of light that gets through [h]. */
  readonly sunHours: number
}
