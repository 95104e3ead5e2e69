import {
  cellCentre,
  fitPlane,
  levelOnPlaneM,
  trianglePlane,
  trianglesOverGrid,
  triangleThicknessM,
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
  const planes = new Map<number, Plane | undefined>()
  const planeOf = (triangle: number) => {
    if (!planes.has(triangle)) planes.set(triangle, trianglePlane(tin, triangle))
    return planes.get(triangle)
  }
  const beyondM = BEYOND_SHARE * (range.highestM - range.lowestM)
  const whole = fitPlane(tin.points)
  const nearest = nearestSource(frame, sources(tin, over))
  const levelM = new Float64Array(share.length)
  for (let cell = 0; cell < share.length; cell++) {
    if (!share[cell]) continue
    const own = over[cell] ?? -1
    const plane = planeOf(own >= 0 ? own : (over[nearest[cell] ?? -1] ?? -1)) ?? whole
    if (!plane) throw new RangeError('triangleLevelsM: the survey needs points beside one line')
    const levelHereM = levelOnPlaneM(plane, cellCentre(frame, cell))
    levelM[cell] =
      own >= 0
        ? levelHereM
        : Math.min(range.highestM + beyondM, Math.max(range.lowestM - beyondM, levelHereM))
  }
  return levelM
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
