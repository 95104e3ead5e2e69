import { cellCentre } from '#core/geometry'
import type { Surface } from '#core/survey'
import { toDegrees } from '#core/units'
import { gradientOf, gradientSum, sumGradients, type Window } from './gradient-sum'
import { gradientSupportM } from './gradient-support'
import type { MeasuringErrors } from './measuring-errors'
import { unitVariance, type WeightedPlace } from './power-variogram'
import { triangleOfCells } from './triangle-of-cells'
import { triangleTable } from './triangle-table'

/** Cells of a zone that its mean is reckoned over; more change nothing that is shown [cells]. */
const ENOUGH_CELLS = 48

/**
 * A way to reckon the standard error of the mean slope of any part of a surface of triangles. The mean is one sum over
 * points, each counted once however many cells lean on it, so what the cells share is propagated and not guessed.
 *
 * @param surface - the ground as cells, with its triangles
 * @param errors - how well the points were measured
 * @param roughnessM - standard deviation of the ground over one metre [m], 0 where it is not known
 * @returns a function from cells to a standard error [°]
 * @throws RangeError when the surface has no triangles
 * @see Journel & Huijbregts 1978, Mining Geostatistics, chapter II
 */
export function meanSlopeErrors(
  surface: Surface,
  errors: MeasuringErrors,
  roughnessM: number,
): (cells: readonly number[]) => number {
  const { tin, frame, share } = surface
  if (!tin) throw new RangeError('meanSlopeErrors: the surface must have triangles, got none')
  const window = { frame, table: triangleTable(tin), triangleOf: triangleOfCells(tin, frame), share }
  return (cells) => {
    const step = Math.max(1, Math.floor(cells.length / ENOUGH_CELLS))
    const mean = meanSlope(
      cells.filter((_, at) => at % step === 0),
      window,
      errors,
    )
    const tilt = errors.levelSdPerM ** 2 * (mean.east ** 2 + mean.north ** 2)
    // The variogram's coefficient is half the mean square difference over one metre.
    const between = (roughnessM ** 2 / 2) * unitVariance(mean.places)
    return toDegrees(Math.sqrt(mean.measured + tilt + between))
  }
}

// The mean of slopes as one sum of levels: of points, and of the ground at both ends of every length it is meant over.
function meanSlope(cells: readonly number[], window: Window, errors: MeasuringErrors) {
  const { frame, table, share } = window
  const supportM = gradientSupportM(frame.cellM)
  const inside = cells.reduce((sum, cell) => sum + share[cell]!, 0)
  const weights = new Map<number, number>()
  const places: WeightedPlace[] = []
  const sum = gradientSum()
  let [east, north, gradientSquares] = [0, 0, 0]
  for (const cell of cells) {
    sumGradients(sum, window, cell)
    const [p, q] = [gradientOf(sum.east, sum, table), gradientOf(sum.north, sum, table)]
    const steepness = Math.hypot(p, q)
    const part = share[cell]! / inside / (1 + steepness * steepness)
    // Level ground has no fall; any direction serves, as all are alike there.
    const [alongEast, alongNorth] =
      steepness > 0 ? [(part * p) / steepness, (part * q) / steepness] : [0, part]
    for (let at = 0; at < sum.count; at++) {
      const point = sum.points[at]!
      const weight = alongEast * sum.east[at]! + alongNorth * sum.north[at]!
      weights.set(point, (weights.get(point) ?? 0) + weight)
    }
    places.push(
      ...endsOf(cellCentre(frame, cell), [alongEast / supportM, alongNorth / supportM], supportM / 2),
    )
    east += alongEast
    north += alongNorth
    gradientSquares += (share[cell]! / inside) * steepness * steepness
  }
  let squares = 0
  for (const [point, weight] of weights) {
    squares += weight * weight
    places.push({ xM: table.eastM[point]!, yM: table.northM[point]!, weight })
  }
  const pointM2 = errors.levelSdM ** 2 + errors.planSdM ** 2 * gradientSquares
  return { places, east, north, measured: pointM2 * squares }
}

function endsOf(
  { eastM, northM }: { readonly eastM: number; readonly northM: number },
  [east, north]: readonly [number, number],
  halfM: number,
): WeightedPlace[] {
  return [
    { xM: eastM + halfM, yM: northM, weight: -east },
    { xM: eastM - halfM, yM: northM, weight: east },
    { xM: eastM, yM: northM + halfM, weight: -north },
    { xM: eastM, yM: northM - halfM, weight: north },
  ]
}
