import { cellAt, cellCentre, type PlanPoint } from '#core/geometry'
import type { Surface } from '#core/survey'
import { toRadians } from '#core/units'
import type { Terrain } from './terrain.types'

/** Rise of the ground per metre eastward and northward [m/m]. */
export interface Rise {
  readonly east: number
  readonly north: number
}

/**
 * The cell of the plot under a place.
 *
 * @param surface - the ground
 * @param place - the place [m]
 * @returns index of the cell [count]; undefined off the plot
 */
export function plotCellAt(surface: Surface, place: PlanPoint): number | undefined {
  const cell = cellAt(surface.frame, place)
  return cell !== undefined && surface.share[cell]! > 0 ? cell : undefined
}

/**
 * Rise of the ground at a cell, from its steepness and the direction it faces.
 *
 * @param terrain - facts of the ground
 * @param cell - index of the cell [count]
 * @returns rise eastward and northward [m/m]
 */
export function riseOfCell(terrain: Terrain, cell: number): Rise {
  const facesDeg = terrain.aspectDeg[cell]!
  if (facesDeg < 0) return { east: 0, north: 0 }
  const gradient = Math.tan(toRadians(terrain.slopeDeg[cell]!))
  const faces = toRadians(facesDeg)
  return { east: -gradient * Math.sin(faces), north: -gradient * Math.cos(faces) }
}

/**
 * Level at a place: between the four cell centres around it, or on the slope of its own cell where one of them lies off
 * the plot.
 *
 * @param surface - the ground
 * @param terrain - its facts
 * @param place - the place, on a cell of the plot [m]
 * @param levelM - levels to read, one for each cell [m]; those of the ground when left out
 * @returns level [m]
 * @throws RangeError when the place is off the plot
 */
export function levelOfPlaceM(
  surface: Surface,
  terrain: Terrain,
  place: PlanPoint,
  levelM: Float64Array = surface.levelM,
): number {
  const four = cornersAround(surface, place)
  if (four.every(({ inside }) => inside))
    return four.reduce((sum, { cell, weight }) => sum + weight * levelM[cell]!, 0)
  const cell = plotCellAt(surface, place)
  if (cell === undefined)
    throw new RangeError(
      `levelOfPlaceM: place must lie on the plot, got east ${place.eastM}, north ${place.northM}`,
    )
  const centre = cellCentre(surface.frame, cell)
  const { east, north } = riseOfCell(terrain, cell)
  return levelM[cell]! + east * (place.eastM - centre.eastM) + north * (place.northM - centre.northM)
}

/**
 * Rise of the ground at a place, between those of the cells around it that lie in the plot.
 *
 * @param surface - the ground
 * @param terrain - its facts
 * @param place - the place [m]
 * @returns rise eastward and northward [m/m]; 0 with no cell of the plot around
 */
export function riseAt(surface: Surface, terrain: Terrain, place: PlanPoint): Rise {
  let [east, north, whole] = [0, 0, 0]
  for (const { cell, weight, inside } of cornersAround(surface, place)) {
    if (!inside) continue
    const rise = riseOfCell(terrain, cell)
    east += weight * rise.east
    north += weight * rise.north
    whole += weight
  }
  return whole > 0 ? { east: east / whole, north: north / whole } : { east: 0, north: 0 }
}

interface Corner {
  readonly cell: number
  readonly weight: number
  readonly inside: boolean
}

// The four cells whose centres stand around a place, each with its weight between them.
function cornersAround({ frame, share }: Surface, place: PlanPoint): Corner[] {
  const x = (place.eastM - frame.westM) / frame.cellM - 0.5
  const y = frame.rows - 0.5 - (place.northM - frame.southM) / frame.cellM
  const [column, row] = [Math.floor(x), Math.floor(y)]
  const [toEast, toSouth] = [x - column, y - row]
  return [
    { east: 0, south: 0, weight: (1 - toEast) * (1 - toSouth) },
    { east: 1, south: 0, weight: toEast * (1 - toSouth) },
    { east: 0, south: 1, weight: (1 - toEast) * toSouth },
    { east: 1, south: 1, weight: toEast * toSouth },
  ]
    .map(({ east, south, weight }) => {
      const [c, r] = [column + east, row + south]
      const onGrid = c >= 0 && r >= 0 && c < frame.columns && r < frame.rows
      const cell = r * frame.columns + c
      // A centre that carries no weight need not lie in the plot.
      return { cell, weight, inside: onGrid && share[cell]! > 0 }
    })
    .filter(({ weight }) => weight > 0)
}
