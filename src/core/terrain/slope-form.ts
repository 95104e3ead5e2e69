import type { Surface } from '#core/survey'
import { generalise } from './generalise'
import type { Gradients } from './gradients'
import { ALL_AROUND, type Neighbourhood } from './neighbours'
import { spreadToEdge } from './spread-to-edge'

/** Bends narrower than about twice this are roughness, not the shape of the ground [m]; own judgement. */
const ROUGHNESS_M = 0.5

/** Most smoothing passes, each widening the view by half a squared cell [count]. */
const MOST_PASSES = 4

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
 * Second derivatives come from the quadratic through each cell and its neighbours; cells at the boundary take the mean
 * of theirs. All derivatives are lightly smoothed; the bends are those of the upright cuts down and across the slope.
 *
 * @param surface - the ground
 * @param hood - its cells and their neighbours
 * @param slopes - gradients of every cell [m/m]
 * @returns curvatures [1/m]; 0 outside the plot
 * @see Zevenbergen and Thorne 1987, Earth Surface Processes and Landforms 12: 47-56
 * @see Mitasova and Hofierka 1993, Mathematical Geology 25: 657-669
 */
export function slopeForm(surface: Surface, hood: Neighbourhood, slopes: Gradients): SlopeForm {
  const { cellM } = surface.frame
  const passes = Math.min(MOST_PASSES, Math.max(1, Math.round(2 * (ROUGHNESS_M / cellM) ** 2)))
  const [eastEast, eastNorth, northNorth] = secondDerivatives(surface, hood)
  const r = generalise(eastEast, hood, passes)
  const s = generalise(eastNorth, hood, passes)
  const t = generalise(northNorth, hood, passes)
  const p = generalise(slopes.east, hood, passes)
  const q = generalise(slopes.north, hood, passes)
  return normalBends({ p, q, r, s, t }, hood)
}

// East-east, east-north and north-north, of every cell [1/m].
function secondDerivatives(surface: Surface, hood: Neighbourhood) {
  const { levelM, frame } = surface
  const known = new Uint8Array(levelM.length)
  const eastEast = new Float64Array(levelM.length)
  const eastNorth = new Float64Array(levelM.length)
  const northNorth = new Float64Array(levelM.length)
  const perSquare = 1 / (frame.cellM * frame.cellM)
  for (let cell = 0; cell < levelM.length; cell++) {
    if (hood.around[cell] !== ALL_AROUND) continue
    known[cell] = 1
    eastEast[cell] = bendAlong(levelM, cell, 1) * perSquare
    northNorth[cell] = bendAlong(levelM, cell, frame.columns) * perSquare
    eastNorth[cell] = twistAt(levelM, cell, frame.columns) * perSquare
  }
  const second = [eastEast, eastNorth, northNorth] as const
  spreadToEdge(second, known, hood)
  return second
}

function bendAlong(levelM: Float64Array, cell: number, offset: number): number {
  return levelM[cell + offset]! + levelM[cell - offset]! - 2 * levelM[cell]!
}

function twistAt(levelM: Float64Array, cell: number, columns: number): number {
  const [north, south] = [cell - columns, cell + columns]
  const rising = levelM[north + 1]! + levelM[south - 1]!
  const falling = levelM[north - 1]! + levelM[south + 1]!
  return (rising - falling) / 4
}

/** First and second derivatives of the level of every cell: east, north; east-east, east-north, north-north. */
interface Derivatives {
  readonly p: Float64Array
  readonly q: Float64Array
  readonly r: Float64Array
  readonly s: Float64Array
  readonly t: Float64Array
}

// Curvatures of the upright cuts down and across the slope; on level ground the mean bend stands for both.
function normalBends(derivatives: Derivatives, { inside }: Neighbourhood): SlopeForm {
  const down = new Float64Array(inside.length)
  const across = new Float64Array(inside.length)
  for (let cell = 0; cell < inside.length; cell++) {
    if (!inside[cell]) continue
    const p = derivatives.p[cell]!
    const q = derivatives.q[cell]!
    const r = derivatives.r[cell]!
    const s = derivatives.s[cell]!
    const t = derivatives.t[cell]!
    const steepness2 = p * p + q * q
    const length = Math.sqrt(1 + steepness2)
    const level = steepness2 < LEVEL_GRADIENT * LEVEL_GRADIENT
    const mean = -(r + t) / 2
    down[cell] = level
      ? mean
      : -(p * p * r + 2 * p * q * s + q * q * t) / (steepness2 * length * length * length)
    across[cell] = level ? mean : -(q * q * r - 2 * p * q * s + p * p * t) / (steepness2 * length)
  }
  return { down, across }
}
