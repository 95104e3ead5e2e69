import type { GradientErrors } from './slope-error'

/** The eight cells around one, clockwise from north: cells east and north. */
const ways = [
  [0, 1],
  [1, 1],
  [1, 0],
  [1, -1],
  [0, -1],
  [-1, -1],
  [-1, 0],
  [-1, 1],
] as const

/** Below this share of their spread the neighbours lie in one line with the cell [cells²/cells²]. */
const LINE_SHARE = 1e-9

/** Where neighbours lie in one line, all that is known is the difference of two: 1 + 1 [1]. */
const ONE_LINE: GradientErrors = { eastEast: 2, eastNorth: 0, northNorth: 2 }

/**
 * Errors of the gradients of a cell some of whose neighbours lie outside the plot, for independent levels: the missing ones
 * stand on the plane through the cell that lies nearest to those there are.
 *
 * @param around - bits of the neighbours there are [flags], from 1 for the north clockwise to 128 for the north-west
 * @returns variances and covariance, in squares of a level's error over the cell's side [1]
 * @throws RangeError when the bits are not a whole number from 0 to 255
 * @see Horn 1981, Proceedings of the IEEE 69: 14-47
 */
export function edgeWindow(around: number): GradientErrors {
  if (!Number.isInteger(around) || around < 0 || around > 255)
    throw new RangeError(`edgeWindow: around must be 0 to 255, got ${around}`)
  const here = ways.map((_, way) => (around & (1 << way)) !== 0)
  const plane = planeOf(here)
  if (!plane) return ONE_LINE
  const east = weightsOf(here, plane, ([e, n]) => e * (2 - Math.abs(n)))
  const north = weightsOf(here, plane, ([e, n]) => n * (2 - Math.abs(e)))
  return { eastEast: product(east, east), eastNorth: product(east, north), northNorth: product(north, north) }
}

interface Plane {
  readonly xx: number
  readonly xy: number
  readonly yy: number
  readonly determinant: number
}

function planeOf(here: readonly boolean[]): Plane | undefined {
  let [xx, xy, yy] = [0, 0, 0]
  for (const [way, [e, n]] of ways.entries()) {
    if (!here[way]) continue
    xx += e * e
    xy += e * n
    yy += n * n
  }
  const determinant = xx * yy - xy * xy
  return determinant > LINE_SHARE * (xx + yy) ** 2 ? { xx, xy, yy, determinant } : undefined
}

// Weights of the eight neighbours' rises over the cell, and last of the cell itself, in one gradient times the cell's side.
function weightsOf(
  here: readonly boolean[],
  { xx, xy, yy, determinant }: Plane,
  horn: (way: readonly [number, number]) => number,
): readonly number[] {
  const weights = ways.map((way, at) => (here[at] ? horn(way) / 8 : 0))
  for (const [missing, way] of ways.entries()) {
    if (here[missing]) continue
    const [e, n] = way
    const [alongEast, alongNorth] = [(e * yy - n * xy) / determinant, (n * xx - e * xy) / determinant]
    for (const [at, [otherE, otherN]] of ways.entries())
      if (here[at]) weights[at]! += (horn(way) / 8) * (alongEast * otherE + alongNorth * otherN)
  }
  return [...weights, -weights.reduce((sum, weight) => sum + weight, 0)]
}

function product(one: readonly number[], other: readonly number[]): number {
  return one.reduce((sum, weight, at) => sum + weight * other[at]!, 0)
}
