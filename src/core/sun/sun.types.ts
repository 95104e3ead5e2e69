import type { Twelve } from '#core/units'

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

/** One day of the sun. */
export interface SunDay extends SunSite {
  readonly linke: number
  /** Day of the year, 1 to 366. */
  readonly dayOfYear: number
  /** Longest time step [h], above 0 to 2; half an hour when left out. */
  readonly stepHours?: number
}

/** What the usual sky of a month lets through to open level ground on its mean day. */
export interface UsualDay {
  /** Radiation on level ground [Wh/m² a day], 0 or more. */
  readonly levelWhPerM2: number
  /** Share of it that comes from the whole sky, not straight from the sun, 0 to 1. */
  readonly diffuseShare: number
}
