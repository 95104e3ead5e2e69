import { toRadians } from '#core/units'

/**
 * Level difference of a bank measured with a tape on the ground and an angle.
 *
 * @param lengthM - length along the slope [m], 0 or more
 * @param slopeDeg - angle from horizontal [°], 0 to 90
 * @returns rise, foot to top [m]
 * @throws RangeError when the length or the angle is out of range
 */
export function riseFromAngleM(lengthM: number, slopeDeg: number): number {
  checkLength(lengthM)
  if (!(slopeDeg >= 0 && slopeDeg <= 90))
    throw new RangeError(`riseFromAngleM: slopeDeg must be 0 to 90, got ${slopeDeg}`)
  return lengthM * Math.sin(toRadians(slopeDeg))
}

/**
 * Level difference of a bank given as "1 in n": one metre up for n metres level.
 *
 * @param lengthM - length along the slope [m], 0 or more
 * @param runPerRise - level metres for each metre of rise [m/m], above 0
 * @returns rise, foot to top [m]
 * @throws RangeError when the length is negative or the run is not above 0
 */
export function riseFromRatioM(lengthM: number, runPerRise: number): number {
  checkLength(lengthM)
  if (!(runPerRise > 0)) throw new RangeError(`riseFromRatioM: runPerRise must be above 0, got ${runPerRise}`)
  return lengthM / Math.hypot(1, runPerRise)
}

/**
 * Level difference of a bank whose gradient is given in percent (100 % is 1 in 1).
 *
 * @param lengthM - length along the slope [m], 0 or more
 * @param gradientPercent - rise for 100 m of level length [%], 0 or more
 * @returns rise, foot to top [m]
 * @throws RangeError when the length or the gradient is negative
 */
export function riseFromPercentM(lengthM: number, gradientPercent: number): number {
  checkLength(lengthM)
  if (!(gradientPercent >= 0))
    throw new RangeError(`riseFromPercentM: gradientPercent must be 0 or more, got ${gradientPercent}`)
  const gradient = gradientPercent / 100
  return (lengthM * gradient) / Math.hypot(1, gradient)
}

function checkLength(lengthM: number): void {
  if (!(lengthM >= 0 && lengthM < Infinity)) throw new RangeError(`lengthM must be 0 or more, got ${lengthM}`)
}
