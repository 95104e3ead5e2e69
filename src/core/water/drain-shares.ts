import { degToGradient } from '#core/units'

/** Ground that water above field capacity leaves, downward and sideways. */
export interface DrainingGround {
  /** Saturated conductivity sideways [mm/h], 0 or more. */
  readonly conductivityMmPerH: number
  /** Saturated conductivity downward, out of the rooting depth [mm/h], above 0. */
  readonly baseMmPerH: number
  readonly slopeDeg: number
  /** Length down the slope [m plan], above 0. */
  readonly lengthM: number
  /** Water the rooting depth holds above field capacity when full [mm], above 0. */
  readonly drainableMm: number
  /** The same as a share of the soil [m³/m³], above 0. */
  readonly drainablePorosity: number
}

/** Shares of the water above field capacity that leave in a day, 0 to 1 together. */
export interface DrainShares {
  readonly sideways: number
  readonly down: number
}

/** Hours in a day [h/d]. */
const HOURS_PER_DAY = 24

/** Shortest time that water takes to pass [h]: SWAT 2009. */
const SHORTEST_PASSAGE_H = 2

/** Turns mm/h over metres into a day's depth in mm [h m/(d mm)]: SWAT 2009 eq. 2:3.5.9. */
const SIDEWAYS_SCALE = 0.024

/**
 * How much of the water above field capacity leaves in a day, downward and sideways.
 *
 * When both ask for more than there is, they share it in proportion.
 *
 * @param ground - the soil and its lie
 * @returns shares of a day [0 to 1]
 * @throws RangeError when a measure of the ground is outside its range
 * @see Sloan & Moore 1984, as in SWAT 2009 eqs 2:3.2.3 and 2:3.5.9
 */
export function drainShares(ground: DrainingGround): DrainShares {
  const { conductivityMmPerH, baseMmPerH, slopeDeg, lengthM, drainableMm, drainablePorosity } = ground
  if (!(Math.min(baseMmPerH, lengthM, drainableMm, drainablePorosity) > 0 && conductivityMmPerH >= 0))
    throw new RangeError(`drainShares: measures must be above 0, got ${JSON.stringify(ground)}`)
  if (!(slopeDeg >= 0 && slopeDeg < 90))
    throw new RangeError(`drainShares: slopeDeg must be 0 to below 90, got ${slopeDeg}`)
  const passageH = Math.max(SHORTEST_PASSAGE_H, drainableMm / baseMmPerH)
  const down = 1 - Math.exp(-HOURS_PER_DAY / passageH)
  const fall = 2 * conductivityMmPerH * degToGradient(slopeDeg)
  const sideways = Math.min(1, (SIDEWAYS_SCALE * fall) / (drainablePorosity * lengthM))
  const asked = Math.max(1, sideways + down)
  return { sideways: sideways / asked, down: down / asked }
}
