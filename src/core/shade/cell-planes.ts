import { squareTo } from '#core/sun'
import type { TiltedCells } from './shade.types'

/** Cells as small planes, ready for the sun. Cells outside the plot are all zero and so collect nothing. */
export interface CellPlanes {
  /** Direction square to each cell, eastward part [1]. */
  readonly east: Float64Array
  readonly north: Float64Array
  readonly up: Float64Array
  /** Share of the sky dome in front of the cell's own plane, cosine-weighted [1]: (1 + cos slope) / 2. */
  readonly ownSky: Float64Array
  /** Muneer's function of the tilt, by which the sky's uneven brightness counts [1]. */
  readonly tiltTerm: Float64Array
}

/**
 * Prepares tilted cells for the sun.
 *
 * @param cells - slope [°] and aspect [°] of each cell
 * @param share - part of each cell inside the plot [1]; all inside when left out
 * @returns the cells as planes
 * @throws RangeError when a cell inside the plot is not a slope from 0° to below 90°
 * @see Muneer 1990, as restated by Hofierka & Suri 2002
 */
export function cellPlanes(cells: TiltedCells, share?: Float64Array): CellPlanes {
  const count = cells.slopeDeg.length
  const planes = {
    east: new Float64Array(count),
    north: new Float64Array(count),
    up: new Float64Array(count),
    ownSky: new Float64Array(count),
    tiltTerm: new Float64Array(count),
  }
  for (let cell = 0; cell < count; cell += 1) {
    if (share !== undefined && !((share[cell] ?? 0) > 0)) continue
    const slopeDeg = cells.slopeDeg[cell] ?? NaN
    const aspectDeg = cells.aspectDeg[cell] ?? NaN
    if (!(slopeDeg >= 0 && slopeDeg < 90) || Number.isNaN(aspectDeg))
      throw new RangeError(`cellPlanes: slope of cell ${cell} must be from 0° to below 90°, got ${slopeDeg}`)
    const square = squareTo(slopeDeg, aspectDeg)
    planes.east[cell] = square.east
    planes.north[cell] = square.north
    planes.up[cell] = square.up
    planes.ownSky[cell] = (1 + square.up) / 2
    planes.tiltTerm[cell] = tiltTerm(square.up)
  }
  return planes
}

/**
 * The sky in front of each cell's own plane with nothing else in the way.
 *
 * @param planes - the cells as planes
 * @returns share of the sky [1], one value per cell
 */
export function openSky(planes: CellPlanes): Float32Array {
  return new Float32Array(planes.ownSky)
}

// sin s - s cos s - pi sin²(s/2), s = slope [rad].
function tiltTerm(cosSlope: number): number {
  const slope = Math.acos(Math.min(1, cosSlope))
  return Math.sin(slope) - slope * cosSlope - (Math.PI * (1 - cosSlope)) / 2
}
