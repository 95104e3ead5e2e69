import type { LevelsSurvey, Surface } from '#core/survey'
import { bendPoints } from './bend-points'
import type { CellErrors } from './cell-errors.types'
import { fitRoughness } from './fit-roughness'
import { gradientBetween } from './gradient-between'
import { gradientOf, gradientSum, sumGradients, type GradientSum, type Window } from './gradient-sum'
import { gradientSupportM } from './gradient-support'
import { leaveOneOut } from './leave-one-out'
import type { MeasuringErrors } from './measuring-errors'
import { unitVariogram } from './power-variogram'
import { slopeErrorDeg } from './slope-error'
import { triangleOfCells } from './triangle-of-cells'
import { cornerWeight, triangleTable } from './triangle-table'
import { markWalls } from './wall-cells'

/**
 * Errors of a surface of triangles: those of the points, carried into every cell with the weights the cell was read with,
 * and those of the ground between the points.
 *
 * @param surface - the ground as cells, with its triangles
 * @param ground - the levels and lines it was made of
 * @param errors - how well they were measured
 * @returns standard errors of level [m] and slope [°] in every cell
 * @throws RangeError when the surface has no triangles
 */
export function triangleErrors(surface: Surface, ground: LevelsSurvey, errors: MeasuringErrors): CellErrors {
  const { tin, frame, share } = surface
  if (!tin || tin.corners.length === 0)
    throw new RangeError('triangleErrors: the surface must have 1 triangle or more, got none')
  const table = triangleTable(tin)
  const roughness = fitRoughness(leaveOneOut(table, errors, bendPoints(tin, ground)))
  const window = { frame, table, triangleOf: triangleOfCells(tin, frame), share }
  const given: Ground = { window, errors, roughness: roughness ?? 0, supportM: gradientSupportM(frame.cellM) }
  const levelSdM = new Float32Array(share.length)
  const slopeSdDeg = new Float32Array(share.length)
  const sum = gradientSum()
  const place = { eastM: 0, northM: 0, cell: 0 }
  for (let cell = 0; cell < share.length; cell++) {
    if (!share[cell]) continue
    place.cell = cell
    place.eastM = frame.westM + ((cell % frame.columns) + 0.5) * frame.cellM
    place.northM = frame.southM + (frame.rows - Math.floor(cell / frame.columns) - 0.5) * frame.cellM
    sumGradients(sum, window, cell)
    const [east, north] = [gradientOf(sum.east, sum, table), gradientOf(sum.north, sum, table)]
    const pointM2 = errors.levelSdM ** 2 + errors.planSdM ** 2 * (east * east + north * north)
    levelSdM[cell] = levelErrorM(given, place, pointM2)
    slopeSdDeg[cell] = slopeErrorDeg(east, north, gradientErrors(sum, given, place, pointM2))
  }
  markWalls({ levelSdM, slopeSdDeg }, surface, ground)
  return { levelSdM, slopeSdDeg, roughness }
}

interface Ground {
  readonly window: Window
  readonly errors: MeasuringErrors
  readonly roughness: number
  readonly supportM: number
}

interface Place {
  readonly eastM: number
  readonly northM: number
  readonly cell: number
}

function gradientErrors(
  sum: GradientSum,
  { window, errors, roughness, supportM }: Ground,
  place: Place,
  pointM2: number,
) {
  let [eastEast, eastNorth, northNorth] = [0, 0, 0]
  for (let at = 0; at < sum.count; at++) {
    eastEast += sum.east[at]! * sum.east[at]!
    eastNorth += sum.east[at]! * sum.north[at]!
    northNorth += sum.north[at]! * sum.north[at]!
  }
  const tilt = errors.levelSdPerM ** 2
  const measured = {
    eastEast: pointM2 * eastEast + tilt,
    eastNorth: pointM2 * eastNorth,
    northNorth: pointM2 * northNorth + tilt,
  }
  if (roughness === 0) return measured
  const between = gradientBetween(sum, window.table, { eastM: place.eastM, northM: place.northM, supportM })
  return {
    eastEast: measured.eastEast + roughness * between.eastEast,
    eastNorth: measured.eastNorth + roughness * between.eastNorth,
    northNorth: measured.northNorth + roughness * between.northNorth,
  }
}

// The level is a sum over the three corners: their errors, and how far the ground strays from their plane.
function levelErrorM({ window, errors, roughness }: Ground, place: Place, pointM2: number): number {
  const { table, triangleOf } = window
  const first = triangleOf[place.cell]! * 3
  let [squares, between] = [0, 0]
  for (let at = first; at < first + 3; at++) {
    const weight = cornerWeight(table, at, place.eastM, place.northM)
    const [x, y] = [table.eastM[table.corners[at]!]!, table.northM[table.corners[at]!]!]
    squares += weight * weight
    between += 2 * weight * unitVariogram((x - place.eastM) ** 2 + (y - place.northM) ** 2)
    for (let next = at + 1; next < first + 3; next++) {
      const other = table.corners[next]!
      const gap = unitVariogram((table.eastM[other]! - x) ** 2 + (table.northM[other]! - y) ** 2)
      between -= 2 * weight * cornerWeight(table, next, place.eastM, place.northM) * gap
    }
  }
  // Levels drift with the distance from where the measuring began: the first point.
  const awayM2 = (place.eastM - table.eastM[0]!) ** 2 + (place.northM - table.northM[0]!) ** 2
  return Math.sqrt(pointM2 * squares + errors.levelSdPerM ** 2 * awayM2 + roughness * Math.max(0, between))
}
