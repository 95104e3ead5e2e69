import {
  fitPlane,
  levelOnPlaneM,
  trianglePlane,
  trianglesOverGrid,
  triangleThicknessM,
  type GridFrame,
  type Plane,
  type Tin,
} from '#core/geometry'
import { nearestSource } from './nearest-source'
import type { LaidGrid } from './surveyed-ground.types'

/** A triangle thinner than this share of the typical one is a splinter: its tilt says nothing of the ground [m/m]. */
const SPLINTER_SHARE = 0.1

/** Beyond the triangles a level stays within this share of the survey's fall above its highest or below its lowest [m/m]. */
const BEYOND_SHARE = 0.5

/**
 * Level of every cell of the plot, read from triangles.
 *
 * Cells whose centre lies outside all triangles take the plane of the nearest well-shaped one (of all points together when
 * every triangle is smaller than a cell), kept within half the
 * survey's fall of its highest and lowest level.
 *
 * @param tin - the triangles, at least one
 * @param grid - the grid laid over the plot
 * @param range - highest and lowest measured level [m]
 * @param range.highestM - highest measured level [m]
 * @param range.lowestM - lowest measured level [m]
 * @returns level of each cell with a share above 0 [m]; 0 elsewhere
 * @throws RangeError when the points lie in one line
 */
export function triangleLevelsM(
  tin: Tin,
  grid: LaidGrid,
  range: { readonly highestM: number; readonly lowestM: number },
): Float64Array {
  const { frame, share } = grid
  const over = trianglesOverGrid(tin, frame)
  const planes = planesOf(tin, over, frame)
  const beyondM = BEYOND_SHARE * (range.highestM - range.lowestM)
  const levelM = new Float64Array(share.length)
  const place = { eastM: 0, northM: 0 }
  for (let cell = 0; cell < share.length; cell++) {
    if (!share[cell]) continue
    place.eastM = frame.westM + ((cell % frame.columns) + 0.5) * frame.cellM
    place.northM = frame.southM + (frame.rows - Math.floor(cell / frame.columns) - 0.5) * frame.cellM
    const levelHereM = levelOnPlaneM(planes(cell), place)
    levelM[cell] =
      over[cell]! >= 0
        ? levelHereM
        : Math.min(range.highestM + beyondM, Math.max(range.lowestM - beyondM, levelHereM))
  }
  return levelM
}

// The plane that holds at a cell: its own triangle's, the nearest one's, or that of all points together.
function planesOf(tin: Tin, over: Int32Array, frame: GridFrame): (cell: number) => Plane {
  const found: (Plane | 'none' | undefined)[] = []
  const planeOf = (triangle: number) => {
    const plane = (found[triangle] ??= trianglePlane(tin, triangle) ?? 'none')
    return plane === 'none' ? undefined : plane
  }
  const whole = fitPlane(tin.points)
  let nearest: Int32Array | undefined
  return (cell) => {
    const own = over[cell]!
    if (own < 0) nearest ??= nearestSource(frame, sources(tin, over))
    const triangle = own >= 0 ? own : (over[nearest?.[cell] ?? -1] ?? -1)
    const plane = (triangle >= 0 ? planeOf(triangle) : undefined) ?? whole
    if (!plane) throw new RangeError('triangleLevelsM: the survey needs points beside one line')
    return plane
  }
}

// Cells under well-shaped triangles: the ones whose plane may be carried outwards.
function sources(tin: Tin, over: Int32Array): Uint8Array {
  const thickM = Float64Array.from({ length: tin.corners.length / 3 }, (_, triangle) =>
    triangleThicknessM(tin, triangle),
  )
  const typicalM = Float64Array.from(thickM).sort()[Math.floor(thickM.length / 2)] ?? 0
  return Uint8Array.from(over, (triangle) =>
    triangle >= 0 && (thickM[triangle] ?? 0) >= SPLINTER_SHARE * typicalM ? 1 : 0,
  )
}
