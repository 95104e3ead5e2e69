import type { CellPlanes } from './cell-planes'
import { bearingRad, type Skylines } from './skylines'

/**
 * Share of the sky that each cell sees past its own plane and the plot's skyline, weighted by the cosine to the cell's
 * own plane: 1 on open level ground, (1 + cos slope) / 2 on an open slope.
 *
 * @param skylines - the skyline of every cell, all around
 * @param planes - the cells as planes
 * @returns share of the sky [1], 0 to 1, one value per cell; 0 outside the plot
 * @see Dozier & Frew 1990, IEEE Transactions on Geoscience and Remote Sensing 28:963-969
 */
export function skyView(skylines: Skylines, planes: CellPlanes): Float32Array {
  const view = new Float32Array(planes.up.length)
  skylines.forEach((skyline, at) => addDirection(view, planes, skyline, bearingRad(at, skylines)))
  for (let cell = 0; cell < view.length; cell += 1) view[cell] = Math.min(1, view[cell]! / skylines.length)
  return view
}

/**
 * Adds one direction's part of the sky; ground below the horizontal hides none of it.
 *
 * @param view - the sky seen so far, one value per cell [1]
 * @param planes - the cells as planes
 * @param skyline - rise over distance of each cell's skyline in this direction [m/m]
 * @param azimuthRad - the direction, clockwise from true north [rad]
 */
export function addDirection(
  view: Float32Array,
  planes: CellPlanes,
  skyline: Float32Array,
  azimuthRad: number,
): void {
  const { east, north, up } = planes
  const towardsEast = Math.sin(azimuthRad)
  const towardsNorth = Math.cos(azimuthRad)
  for (let cell = 0; cell < view.length; cell += 1) {
    const upright = up[cell]!
    if (upright === 0) continue
    const outward = east[cell]! * towardsEast + north[cell]! * towardsNorth
    // The plane itself rises by -outward / upright in this direction.
    const rise = Math.max(0, skyline[cell]!, -outward / upright)
    view[cell]! += rise === 0 ? upright + (outward * Math.PI) / 2 : skyAbove(rise, upright, outward)
  }
}

/**
 * The sky above a rise in one direction, weighted by the cosine to a plane.
 *
 * @param rise - rise over distance that hides the sky below it [m/m], 0 or more and no less than the plane's own
 * @param upright - upright part of the direction square to the plane [1]
 * @param outward - its part in the direction looked towards [1]
 * @returns share of what one direction holds on open level ground [1]
 * @see Dozier & Frew 1990, eq. 7b, of one direction
 */
export function skyAbove(rise: number, upright: number, outward: number): number {
  return upright / (1 + rise * rise) + outward * flatPart(rise)
}

/** Entries of the table for each unit of rise, and the rise that it ends at [m/m]: read between, it is true to 0.00001. */
const PER_UNIT = 256
const TABLE_TO = 8
const table = Float64Array.from({ length: PER_UNIT * TABLE_TO + 2 }, (_, at) => exactFlatPart(at / PER_UNIT))

function flatPart(rise: number): number {
  if (rise >= TABLE_TO) return exactFlatPart(rise)
  const place = rise * PER_UNIT
  const at = Math.trunc(place)
  const before = table[at]!
  return before + (place - at) * (table[at + 1]! - before)
}

// What the sky above a rise gives to an upright plane.
function exactFlatPart(rise: number): number {
  return Math.PI / 2 - Math.atan(rise) - rise / (1 + rise * rise)
}
