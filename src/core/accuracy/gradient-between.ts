import type { GradientErrors } from './slope-error'
import type { GradientSum } from './gradient-sum'
import { unitVariogram } from './power-variogram'
import type { TriangleTable } from './triangle-table'

/** Where the gradient is meant, and over what length. */
export interface Meant {
  readonly eastM: number
  readonly northM: number
  /** Length over which the ground's own gradient is taken, east and north [m]. */
  readonly supportM: number
}

/**
 * How far the gradients read from points miss those of the ground itself, on ground whose coefficient is 1: variances and
 * covariance of the differences, by the law of intrinsic random functions.
 *
 * @param sum - the gradients as sums over points
 * @param table - where the points lie
 * @param meant - the gradients of the ground itself
 * @returns variances and covariance [m²/m² for each unit of the coefficient]
 * @see Journel & Huijbregts 1978, Mining Geostatistics, chapter II
 */
export function gradientBetween(sum: GradientSum, table: TriangleTable, meant: Meant): GradientErrors {
  const { supportM } = meant
  let eastEast = (2 * unitVariogram(supportM * supportM)) / (supportM * supportM)
  let northNorth = eastEast
  let eastNorth = 0
  for (let at = 0; at < sum.count; at++) {
    const point = sum.points[at]!
    const x = table.eastM[point]! - meant.eastM
    const y = table.northM[point]! - meant.northM
    const [east, north] = [sum.east[at]!, sum.north[at]!]
    const half = supportM / 2
    const eastward = (square(x - half, y) - square(x + half, y)) / supportM
    const northward = (square(x, y - half) - square(x, y + half)) / supportM
    eastEast += 2 * east * eastward
    northNorth += 2 * north * northward
    eastNorth += east * northward + north * eastward
    for (let next = at + 1; next < sum.count; next++) {
      const other = sum.points[next]!
      const gap = square(table.eastM[other]! - meant.eastM - x, table.northM[other]! - meant.northM - y)
      eastEast -= 2 * east * sum.east[next]! * gap
      northNorth -= 2 * north * sum.north[next]! * gap
      eastNorth -= (east * sum.north[next]! + north * sum.east[next]!) * gap
    }
  }
  return { eastEast: Math.max(0, eastEast), eastNorth, northNorth: Math.max(0, northNorth) }
}

const square = (xM: number, yM: number): number => unitVariogram(xM * xM + yM * yM)
