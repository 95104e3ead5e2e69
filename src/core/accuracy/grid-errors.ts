import type { GridFrame } from '#core/geometry'
import type { GridSurvey, Surface } from '#core/survey'
import type { Terrain } from '#core/terrain'
import { degToGradient, toRadians } from '#core/units'
import type { CellErrors } from './cell-errors.types'
import { edgeWindow } from './edge-window'
import { gradientSupportM } from './gradient-support'
import { gridRoughness } from './grid-roughness'
import type { MeasuringErrors } from './measuring-errors'
import { unitVariance } from './power-variogram'
import { slopeErrorDeg, type GradientErrors } from './slope-error'

/** Slopes of the cells. */
type Slopes = Pick<Terrain, 'slopeDeg' | 'aspectDeg'>

/**
 * Errors of a grid of levels, each cell's taken to be independent of the others'.
 *
 * @param surface - the ground as cells
 * @param terrain - its slopes
 * @param ground - the grid it was made of
 * @param errors - how well its levels were measured
 * @returns standard errors of level [m] and slope [°] in every cell
 * @see Florinsky 1998, International Journal of Geographical Information Science 12: 47-62
 */
export function gridErrors(
  surface: Surface,
  terrain: Slopes,
  ground: GridSurvey,
  errors: MeasuringErrors,
): CellErrors {
  const { frame, share } = surface
  const levelSdM = levelErrors(surface, terrain, ground, errors)
  const roughness = gridRoughness(surface, levelSdM)
  const common = errors.levelSdPerM ** 2 + (roughness ?? 0) * windowUnit(frame.cellM)
  const windows: (GradientErrors | undefined)[] = []
  const slopeSdDeg = new Float32Array(share.length)
  for (let cell = 0; cell < share.length; cell++) {
    if (!share[cell]) continue
    const around = aroundOf(frame, share, cell)
    const window = (windows[around] ??= edgeWindow(around))
    const unit = (levelSdM[cell]! / frame.cellM) ** 2
    const gradient = degToGradient(terrain.slopeDeg[cell]!)
    const downhill = toRadians(terrain.aspectDeg[cell]!)
    slopeSdDeg[cell] = slopeErrorDeg(-gradient * Math.sin(downhill), -gradient * Math.cos(downhill), {
      eastEast: unit * window.eastEast + common,
      eastNorth: unit * window.eastNorth,
      northNorth: unit * window.northNorth + common,
    })
  }
  return { levelSdM, slopeSdDeg, roughness }
}

// Where cells were joined, the errors of the levels in a block average out.
function levelErrors(
  { frame, share }: Surface,
  terrain: Slopes,
  ground: GridSurvey,
  errors: MeasuringErrors,
): Float32Array {
  const blockSide = Math.max(1, Math.round(frame.cellM / ground.cellM))
  const sds = new Float32Array(share.length)
  for (let cell = 0; cell < share.length; cell++)
    if (share[cell]! > 0) {
      const movedM = errors.planSdM * degToGradient(terrain.slopeDeg[cell]!)
      sds[cell] = Math.sqrt(errors.levelSdM * errors.levelSdM + movedM * movedM) / blockSide
    }
  return sds
}

/** Cells around one, clockwise from north: columns to the right, rows down. */
const aroundSteps = [
  [0, -1],
  [1, -1],
  [1, 0],
  [1, 1],
  [0, 1],
  [-1, 1],
  [-1, 0],
  [-1, -1],
] as const

function aroundOf({ columns, rows }: GridFrame, share: Float64Array, cell: number): number {
  const column = cell % columns
  const row = (cell - column) / columns
  let bits = 0
  for (let way = 0; way < aroundSteps.length; way++) {
    const [right, down] = aroundSteps[way]!
    const [c, r] = [column + right, row + down]
    if (c >= 0 && c < columns && r >= 0 && r < rows && share[r * columns + c]! > 0) bits |= 1 << way
  }
  return bits
}

// How far a window's gradient misses that of the ground over its own length, on ground whose coefficient is 1.
function windowUnit(cellM: number): number {
  const supportM = gradientSupportM(cellM)
  const side = (right: 1 | -1) =>
    [-1, 0, 1].map((up) => ({
      xM: right * cellM,
      yM: up * cellM,
      weight: (-right * (2 - Math.abs(up))) / (8 * cellM),
    }))
  return unitVariance([
    { xM: supportM / 2, yM: 0, weight: 1 / supportM },
    { xM: -supportM / 2, yM: 0, weight: -1 / supportM },
    ...side(1),
    ...side(-1),
  ])
}
