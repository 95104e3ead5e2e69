import type { Surface } from '#core/survey'
import { generalise } from './generalise'
import { ALL_AROUND, eightWays, type Neighbourhood } from './neighbours'

/** Roughness narrower than about twice this says nothing of the shape of the ground [m]; own judgement. */
const ROUGHNESS_M = 0.5

/** Most smoothing passes, each widening the view by half a squared cell [count]. */
const MOST_PASSES = 8

/** Ground flatter than this has no direction down or across [m/m]. */
const LEVEL_GRADIENT = 1e-6

/** Bends of the ground, one value per cell [1/m]. */
export interface SlopeForm {
  /** Down the slope: positive where it steepens downhill. */
  readonly down: Float64Array
  /** Across the slope: positive on a nose, negative in a hollow. */
  readonly across: Float64Array
}

/**
 * How the ground bends down and across the slope.
 *
 * The lightly smoothed ground is read with a quadratic through each cell and its neighbours; the bends are those of
 * the upright cuts down and across the slope. Cells at the boundary take the mean of their neighbours.
 *
 * @param surface - the ground
 * @param hood - its cells and their neighbours
 * @returns curvatures [1/m]; 0 outside the plot
 * @see Zevenbergen and Thorne 1987, Earth Surface Processes and Landforms 12: 47-56
 */
export function slopeForm(surface: Surface, hood: Neighbourhood): SlopeForm {
  const { cellM } = surface.frame
  const passes = Math.min(MOST_PASSES, Math.max(1, Math.round(2 * (ROUGHNESS_M / cellM) ** 2)))
  const levelM = generalise(surface.levelM, hood, passes)
  const down = new Float64Array(levelM.length)
  const across = new Float64Array(levelM.length)
  const known = new Uint8Array(levelM.length)
  for (let cell = 0; cell < levelM.length; cell++) {
    if (hood.around[cell] !== ALL_AROUND) continue
    const bend = bendAt(levelM, hood.offsets, cell, cellM)
    down[cell] = bend.down
    across[cell] = bend.across
    known[cell] = 1
  }
  spreadToEdge([down, across], known, hood)
  return { down, across }
}

function bendAt(levelM: Float64Array, offsets: readonly number[], cell: number, cellM: number) {
  const at = (way: number) => levelM[cell + (offsets[way] ?? 0)] ?? 0
  const [n, e, s, w] = [at(0), at(2), at(4), at(6)]
  const middle = levelM[cell] ?? 0
  const square = cellM * cellM
  return normalBends({
    p: (e - w) / (2 * cellM),
    q: (n - s) / (2 * cellM),
    r: (e - 2 * middle + w) / square,
    s: (at(1) - at(7) - at(3) + at(5)) / (4 * square),
    t: (n - 2 * middle + s) / square,
  })
}

/** First and second derivatives of the level: east, north; east-east, east-north, north-north. */
interface Derivatives {
  readonly p: number
  readonly q: number
  readonly r: number
  readonly s: number
  readonly t: number
}

/**
 * Curvatures of the upright cuts down and across the slope.
 *
 * @param derivatives - first [m/m] and second [1/m] derivatives of the level
 * @returns curvatures down and across [1/m], outward bends positive; the mean bend for both on level ground
 * @see Mitasova and Hofierka 1993, Mathematical Geology 25: 657-669
 */
export function normalBends(derivatives: Derivatives): { down: number; across: number } {
  const { p, q, r, s, t } = derivatives
  const steepness2 = p * p + q * q
  if (steepness2 < LEVEL_GRADIENT * LEVEL_GRADIENT) return { down: -(r + t) / 2, across: -(r + t) / 2 }
  const length2 = 1 + steepness2
  return {
    down: -(p * p * r + 2 * p * q * s + q * q * t) / (steepness2 * length2 * Math.sqrt(length2)),
    across: -(q * q * r - 2 * p * q * s + p * p * t) / (steepness2 * Math.sqrt(length2)),
  }
}

// Ring by ring towards the boundary, until no cell can be reached any more.
function spreadToEdge(values: readonly Float64Array[], known: Uint8Array, hood: Neighbourhood): void {
  let waiting: number[] = []
  for (let cell = 0; cell < known.length; cell++) if (hood.inside[cell] && !known[cell]) waiting.push(cell)
  for (;;) {
    const reached = waiting.filter((cell) => knownAround(cell, known, hood).length > 0)
    if (reached.length === 0) return
    for (const cell of reached) takeMean(cell, values, knownAround(cell, known, hood))
    for (const cell of reached) known[cell] = 1
    waiting = waiting.filter((cell) => !known[cell])
  }
}

function knownAround(cell: number, known: Uint8Array, hood: Neighbourhood): number[] {
  const bits = hood.around[cell] ?? 0
  const around: number[] = []
  for (let way = 0; way < eightWays.length; way++) {
    const other = cell + (hood.offsets[way] ?? 0)
    if (bits & (1 << way) && known[other]) around.push(other)
  }
  return around
}

function takeMean(cell: number, values: readonly Float64Array[], from: readonly number[]): void {
  for (const value of values)
    value[cell] = from.reduce((sum, other) => sum + (value[other] ?? 0), 0) / from.length
}
