import type { Residual } from './fit-roughness'
import type { MeasuringErrors } from './measuring-errors'
import { unitVariance } from './power-variogram'
import type { TriangleTable } from './triangle-table'

/** Beyond this sum of squared weights neighbours lie to one side, and a miss says more of them than of the point [1]. */
const MOST_SQUARES = 1

/** Neighbours spread over less than this share of their longer spread lie in one line [m²/m²]. */
const LINE_SHARE = 1e-6

/**
 * Every point left out and read from the plane nearest to its neighbours. A plane takes out the fall of the ground, so what
 * is missed is measuring and roughness.
 *
 * @param table - the triangles
 * @param errors - how well the points were measured
 * @param bends - points on lines where the ground is known to bend, which are not left out
 * @returns what each point is missed by, with the shares of measuring and ground
 */
export function leaveOneOut(
  table: TriangleTable,
  errors: MeasuringErrors,
  bends: ReadonlySet<number>,
): readonly Residual[] {
  return neighboursOf(table).flatMap((neighbours, point): Residual[] => {
    if (bends.has(point) || neighbours.length < 3) return []
    const fit = planeWeights(table, point, neighbours)
    if (!fit) return []
    let [readM, east, north, squares] = [0, 0, 0, 0]
    for (const [at, neighbour] of neighbours.entries()) {
      const levelM = table.levelM[neighbour]! - table.levelM[point]!
      readM += fit.level[at]! * levelM
      east += fit.east[at]! * levelM
      north += fit.north[at]! * levelM
      squares += fit.level[at]! ** 2
    }
    if (squares > MOST_SQUARES) return []
    const pointM2 = errors.levelSdM ** 2 + errors.planSdM ** 2 * (east * east + north * north)
    return [
      {
        squareM2: readM * readM,
        measuringM2: pointM2 * (1 + squares),
        unit: unitVariance([
          placeOf(table, point, -1),
          ...neighbours.map((one, at) => placeOf(table, one, fit.level[at]!)),
        ]),
      },
    ]
  })
}

const placeOf = (table: TriangleTable, point: number, weight: number) => ({
  xM: table.eastM[point]!,
  yM: table.northM[point]!,
  weight,
})

function neighboursOf({ corners, levelM }: TriangleTable): readonly (readonly number[])[] {
  const found: Set<number>[] = Array.from(levelM, () => new Set<number>())
  for (let at = 0; at < corners.length; at += 3)
    for (let corner = 0; corner < 3; corner++) {
      const own = found[corners[at + corner]!]
      own?.add(corners[at + ((corner + 1) % 3)]!)
      own?.add(corners[at + ((corner + 2) % 3)]!)
    }
  return found.map((set) => [...set])
}

// Weights of the neighbours in the level and the gradients of their plane (least squares), at the point.
function planeWeights(table: TriangleTable, point: number, neighbours: readonly number[]) {
  const x = neighbours.map((one) => table.eastM[one]! - table.eastM[point]!)
  const y = neighbours.map((one) => table.northM[one]! - table.northM[point]!)
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length
  const [middleX, middleY] = [mean(x), mean(y)]
  let [xx, xy, yy] = [0, 0, 0]
  for (const at of x.keys()) {
    const [dx, dy] = [x[at]! - middleX, y[at]! - middleY]
    xx += dx * dx
    xy += dx * dy
    yy += dy * dy
  }
  const determinant = xx * yy - xy * xy
  if (!(determinant > LINE_SHARE * (xx + yy) ** 2)) return undefined
  const east = x.map((_, at) => ((x[at]! - middleX) * yy - (y[at]! - middleY) * xy) / determinant)
  const north = x.map((_, at) => ((y[at]! - middleY) * xx - (x[at]! - middleX) * xy) / determinant)
  const level = x.map((_, at) => 1 / x.length - middleX * east[at]! - middleY * north[at]!)
  return { level, east, north }
}
