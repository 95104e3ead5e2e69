import { toRadians } from '#core/units'

/** Length of the unit plot [m] and its steepness as a sine [-]: AH-703. */
const PLOT_LENGTH_M = 22.13
const PLOT_SINE = 0.0896

/** Gradient from which the steeper equation holds [m/m]: AH-703 eqs 4-4 and 4-5. */
const STEEP_GRADIENT = 0.09

/** Shortest slope on which water gathers into rills, and one too short for any [m]: 15 and 3 feet, AH-703. */
const RILL_M = 4.572
const SHEET_M = 0.9144

/**
 * Slope factor LS: soil lost on a slope over that on the unit plot of 22 m at 9 %.
 *
 * Moderate ratio of rill to interrill erosion. From 0.9 to 4.6 m, too short for rills, the factor runs
 * evenly on logarithmic scales between the equations for short and for long slopes.
 *
 * @param lengthM - length down the slope [m plan], above 0
 * @param slopeDeg - angle from horizontal [°], 0 to below 90; the equations were made for up to 31°
 * @returns slope factor [-], 0 or more
 * @throws RangeError when an input is outside its range
 * @see AH-703 (Renard et al. 1997), ch. 4, McCool's equations
 */
export function slopeFactor(lengthM: number, slopeDeg: number): number {
  if (!(lengthM > 0 && Number.isFinite(lengthM)))
    throw new RangeError(`slopeFactor: lengthM must be above 0, got ${lengthM}`)
  if (!(slopeDeg >= 0 && slopeDeg < 90))
    throw new RangeError(`slopeFactor: slopeDeg must be 0 to below 90, got ${slopeDeg}`)
  const sine = Math.sin(toRadians(slopeDeg))
  const long = longSteepness(sine, Math.tan(toRadians(slopeDeg)))
  if (lengthM >= RILL_M) return long * lengthFactor(lengthM, sine)
  const atRill = long * lengthFactor(RILL_M, sine)
  const atSheet = Math.min(long, shortSteepness(sine)) * lengthFactor(RILL_M, sine)
  const way = Math.max(0, Math.log(lengthM / SHEET_M) / Math.log(RILL_M / SHEET_M))
  return atSheet * (atRill / atSheet) ** way
}

function longSteepness(sine: number, gradient: number): number {
  return gradient < STEEP_GRADIENT ? 10.8 * sine + 0.03 : 16.8 * sine - 0.5
}

function shortSteepness(sine: number): number {
  return 3 * sine ** 0.8 + 0.56
}

function lengthFactor(lengthM: number, sine: number): number {
  const rillRatio = sine / PLOT_SINE / shortSteepness(sine)
  return (lengthM / PLOT_LENGTH_M) ** (rillRatio / (1 + rillRatio))
}
