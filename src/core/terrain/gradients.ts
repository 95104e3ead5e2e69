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
  const { levelM } = surface
  const east = new Float64Array(levelM.length)
  const north = new Float64Array(levelM.length)
  const scale = 1 / (8 * surface.frame.cellM)
  const around = new Float64Array(eightWays.length)
  for (let cell = 0; cell < levelM.length; cell++) {
    if (!hood.inside[cell]) continue
    for (let way = 0; way < around.length; way++) around[way] = levelM[cell + (hood.offsets[way] ?? 0)] ?? 0
    if (hood.around[cell] !== ALL_AROUND) fillMissing(around, surface, hood, cell)
    east[cell] = weightedRise(around, 2) * scale
    north[cell] = weightedRise(around, 0) * scale
  }
  return { east, north }
}

// Three neighbours on the side of `way` less the three opposite; neighbours run clockwise from north.
function weightedRise(around: Float64Array, way: number): number {
  const ahead = around[(way + 7) % 8]! + 2 * around[way]! + around[(way + 1) % 8]!
  const behind = around[(way + 3) % 8]! + 2 * around[(way + 4) % 8]! + around[(way + 5) % 8]!
  return ahead - behind
}

function fillMissing(around: Float64Array, surface: Surface, hood: Neighbourhood, cell: number): void {
  const plane = localPlane(surface, hood, cell)
  const bits = hood.around[cell] ?? 0
  for (const [way, { east, north }] of eightWays.entries())
    if (!(bits & (1 << way)))
      around[way] = (surface.levelM[cell] ?? 0) + plane.eastRiseM * east + plane.northRiseM * north
}
