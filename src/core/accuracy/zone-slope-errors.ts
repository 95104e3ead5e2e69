import type { GroundSurvey, Surface } from '#core/survey'
import type { Accuracy } from './accuracy.types'
import { meanSlopeErrors } from './mean-slope-error'
import type { MeasuringErrors } from './measuring-errors'

/** How well the slope of a zone is known. */
export interface SlopeError {
  /** Standard error of its mean slope [°]. */
  readonly meanDeg: number
  /** Standard error of its steep figure, which nine tenths do not exceed [°]. */
  readonly steepDeg: number
}

/** Zones on the ground. */
export interface ZonedGround {
  /** Zone of each cell, -1 outside. */
  readonly zoneOfCell: Int16Array
  /** Number of zones. */
  readonly count: number
  readonly surface: Surface
  readonly slopeDeg: Float64Array
}

/** What was measured, and how well. */
export interface Measured {
  readonly ground: GroundSurvey
  readonly errors: MeasuringErrors
  readonly accuracy: Accuracy
}

/** The part of a zone that its steep figure stands for: the steepest fifth, whose middle the figure is [m²/m²]. */
const STEEPEST_SHARE = 0.2

/**
 * Standard errors of the slopes of zones. The error of a mean over triangles counts every point once, with all it weighs in
 * the mean. On a strip and on a grid the errors of the cells are taken as wholly shared: the error of the mean is then the
 * mean of the errors, and so is that of the steep figure everywhere. None gets smaller with the number of cells.
 *
 * @param zoned - zones on the ground
 * @param measured - what was measured, and how well
 * @returns one pair of errors to a zone [°]
 * @throws RangeError when a zone has no cell inside the plot
 * @see JCGM 100:2008, Guide to the expression of uncertainty in measurement, clause 5.2.2
 */
export function zoneSlopeErrors(zoned: ZonedGround, measured: Measured): readonly SlopeError[] {
  const { surface, zoneOfCell, count } = zoned
  const { ground, errors, accuracy } = measured
  const cells: number[][] = Array.from({ length: count }, () => [])
  zoneOfCell.forEach((zone, cell) => {
    if (surface.share[cell]! > 0) cells[zone]?.push(cell)
  })
  const shared = (some: readonly number[]) => sharedError(some, surface.share, accuracy.slopeSdDeg)
  const meanOf =
    ground.kind === 'levels' ? meanSlopeErrors(surface, errors, accuracy.from.roughnessM ?? 0) : shared
  return cells.map((own, zone) => {
    if (own.length === 0) throw new RangeError(`zoneSlopeErrors: zone ${zone} has no cell inside the plot`)
    return { meanDeg: meanOf(own), steepDeg: shared(steepest(own, zoned)) }
  })
}

function sharedError(cells: readonly number[], share: Float64Array, slopeSdDeg: Float32Array): number {
  let [sum, inside] = [0, 0]
  for (const cell of cells) {
    sum += share[cell]! * slopeSdDeg[cell]!
    inside += share[cell]!
  }
  return sum / inside
}

// The steepest cells of a zone, as many as hold a fifth of it.
function steepest(cells: readonly number[], { surface, slopeDeg }: ZonedGround): readonly number[] {
  const wanted = STEEPEST_SHARE * cells.reduce((sum, cell) => sum + surface.share[cell]!, 0)
  const falling = [...cells].sort((one, other) => slopeDeg[other]! - slopeDeg[one]! || one - other)
  let held = 0
  const last = falling.findIndex((cell) => (held += surface.share[cell]!) >= wanted)
  return falling.slice(0, last + 1)
}
