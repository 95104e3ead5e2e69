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

// Adds one direction's part of the sky; ground below the horizontal hides none of it.
function addDirection(
  view: Float32Array,
  { east, north, up }: CellPlanes,
  skyline: Float32Array,
  azimuthRad: number,
): void {
  const towardsEast = Math.sin(azimuthRad)
  const towardsNorth = Math.cos(azimuthRad)
  for (let cell = 0; cell < view.length; cell += 1) {
    const upright = up[cell]!
    if (upright === 0) continue
    const outward = east[cell]! * towardsEast + north[cell]! * towardsNorth
    const rise = Math.max(0, skyline[cell]!, -outward / upright)
    const flat = rise === 0 ? Math.PI / 2 : Math.PI / 2 - Math.atan(rise) - rise / (1 + rise * rise)
    view[cell]! += upright / (1 + rise * rise) + outward * flat
  }
}
