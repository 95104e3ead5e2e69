import type { Surface } from '#core/survey'
import { localPlane } from './local-plane'
import { ALL_AROUND, eightWays, type Neighbourhood } from './neighbours'

/** Rise of the ground per metre eastward and northward, one value per cell [m/m]. */
export interface Gradients {
  readonly east: Float64Array
  readonly north: Float64Array
}

/**
 * Gradients of every cell from its eight neighbours, the nearer ones counting double.
 *
 * Neighbours outside the plot are filled in on the plane through the cell that lies nearest to the neighbours there
 * are, so that even ground is exact up to the boundary.
 *
 * @param surface - the ground
 * @param hood - its cells and their neighbours
 * @returns gradients [m/m]; 0 outside the plot
 * @see Horn 1981, Proceedings of the IEEE 69: 14-47
 */
export function gradients(surface: Surface, hood: Neighbourhood): Gradients {
  const { levelM, frame } = surface
  const slopes = { east: new Float64Array(levelM.length), north: new Float64Array(levelM.length) }
  const scale = 1 / (8 * frame.cellM)
  insideGradients(slopes, levelM, hood, scale)
  for (let cell = 0; cell < levelM.length; cell++) {
    if (!hood.inside[cell] || hood.around[cell] === ALL_AROUND) continue
    const around = completed(surface, hood, cell)
    slopes.east[cell] = weightedRise(around, 2) * scale
    slopes.north[cell] = weightedRise(around, 0) * scale
  }
  return slopes
}

// Cells with all their neighbours: nothing to check and nothing to fill in.
function insideGradients(
  { east, north }: Gradients,
  levelM: Float64Array,
  { around, columns }: Neighbourhood,
  scale: number,
): void {
  for (let cell = columns + 1; cell < levelM.length - columns - 1; cell++) {
    if (around[cell] !== ALL_AROUND) continue
    const above = cell - columns
    const below = cell + columns
    const fallingNeSw = levelM[above + 1]! - levelM[below - 1]!
    const fallingNwSe = levelM[above - 1]! - levelM[below + 1]!
    east[cell] = (fallingNeSw - fallingNwSe + 2 * (levelM[cell + 1]! - levelM[cell - 1]!)) * scale
    north[cell] = (fallingNeSw + fallingNwSe + 2 * (levelM[above]! - levelM[below]!)) * scale
  }
}

// Three neighbours on the side of `way` less the three opposite; neighbours run clockwise from north.
function weightedRise(around: Float64Array, way: number): number {
  const ahead = around[(way + 7) % 8]! + 2 * around[way]! + around[(way + 1) % 8]!
  const behind = around[(way + 3) % 8]! + 2 * around[(way + 4) % 8]! + around[(way + 5) % 8]!
  return ahead - behind
}

// Levels of the eight neighbours, the missing ones on the plane through the cell.
function completed(surface: Surface, hood: Neighbourhood, cell: number): Float64Array {
  const { levelM } = surface
  const plane = localPlane(surface, hood, cell)
  const bits = hood.around[cell]!
  const around = new Float64Array(eightWays.length)
  for (let way = 0; way < eightWays.length; way++) {
    const { east, north } = eightWays[way]!
    around[way] =
      bits & (1 << way)
        ? levelM[cell + hood.offsets[way]!]!
        : levelM[cell]! + plane.eastRiseM * east + plane.northRiseM * north
  }
  return around
}
