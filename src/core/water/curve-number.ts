import { degToGradient } from '#core/units'

/** Curve numbers are kept between these [-]: TR-55 table 2-2 and its notes. */
const LOWEST = 30
const HIGHEST = 98

/** A dry curve number is at least this share of the usual one [-]: SWAT 2009 eq. 2:1.1.4. */
const LEAST_DRY_SHARE = 0.4

/**
 * Curve number of the same ground when dry to the wilting point.
 *
 * @param curveNumber - curve number at usual wetness [-], 30 to 98
 * @returns curve number when dry [-], below the usual one
 * @throws RangeError when the curve number is outside its range
 * @see SWAT 2009, eq. 2:1.1.4
 */
export function dryCurveNumber(curveNumber: number): number {
  refuseOutside(curveNumber)
  const gap = 100 - curveNumber
  return Math.max(
    LEAST_DRY_SHARE * curveNumber,
    curveNumber - (20 * gap) / (gap + Math.exp(2.533 - 0.0636 * gap)),
  )
}

/**
 * Curve number of the same ground at field capacity.
 *
 * @param curveNumber - curve number at usual wetness [-], 30 to 98
 * @returns curve number when wet [-], above the usual one
 * @throws RangeError when the curve number is outside its range
 * @see SWAT 2009, eq. 2:1.1.5
 */
export function wetCurveNumber(curveNumber: number): number {
  refuseOutside(curveNumber)
  return curveNumber * Math.exp(0.00673 * (100 - curveNumber))
}

/**
 * Curve number of ground steeper or flatter than the 5 % that the tables stand for.
 *
 * @param curveNumber - curve number of the table, usual wetness [-], 30 to 98
 * @param slopeDeg - angle from horizontal [°], 0 to below 90
 * @returns curve number on the slope, usual wetness [-], 30 to 98
 * @throws RangeError when an input is outside its range
 * @see Williams 1995, EPIC; SWAT 2009, eq. 2:1.1.12
 */
export function slopedCurveNumber(curveNumber: number, slopeDeg: number): number {
  if (!(slopeDeg >= 0 && slopeDeg < 90))
    throw new RangeError(`slopedCurveNumber: slopeDeg must be 0 to below 90, got ${slopeDeg}`)
  const third = (wetCurveNumber(curveNumber) - curveNumber) / 3
  const sloped = curveNumber + third * (1 - 2 * Math.exp(-13.86 * degToGradient(slopeDeg)))
  return Math.min(HIGHEST, Math.max(LOWEST, sloped))
}

function refuseOutside(curveNumber: number): void {
  if (!(curveNumber >= LOWEST && curveNumber <= HIGHEST))
    throw new RangeError(`curveNumber must be ${LOWEST} to ${HIGHEST}, got ${curveNumber}`)
}
