import type { GridFrame } from '#core/geometry'
import { toDegrees } from '#core/units'
import { sweepGround, type SweptLine } from './sweep-ground'
import { sweptGround, type SweptGround } from './swept-ground'

/** Angle given where there is no ground in the direction [°]. */
const NO_GROUND_DEG = -90

/**
 * How high the skyline stands in one direction, seen from the ground of every cell. Only ground inside the plot counts.
 *
 * @param frame - where the grid lies
 * @param levelM - level of each cell centre [m]
 * @param share - part of each cell inside the plot [1], 0 to 1
 * @param azimuthDeg - direction looked towards, clockwise from true north [°], finite
 * @returns angle of the skyline above the horizontal [°], negative where all ground that way is lower, -90 with no ground
 * @throws RangeError when the grid does not fit its frame or the direction is not finite
 * @see Dozier, Bruno & Downey 1981, Computers & Geosciences 7:145-151; checked by GRASS r.horizon
 */
export function horizonOf(
  frame: GridFrame,
  levelM: Float64Array,
  share: Float64Array,
  azimuthDeg: number,
): Float32Array {
  const cells = frame.columns * frame.rows
  if (levelM.length !== cells || share.length !== cells)
    throw new RangeError(`horizonOf: the frame has ${cells} cells, got ${levelM.length} and ${share.length}`)
  if (!Number.isFinite(azimuthDeg))
    throw new RangeError(`horizonOf: direction [°] must be finite, got ${azimuthDeg}`)
  const skyline = skylineTangents(sweptGround({ frame, levelM, share }), azimuthDeg)
  return skyline.map((tangent) => (tangent === -Infinity ? NO_GROUND_DEG : toDegrees(Math.atan(tangent))))
}

/**
 * The same as rise over distance, for reckoning on.
 *
 * @param ground - the grid, made ready
 * @param azimuthDeg - direction looked towards, clockwise from true north [°]
 * @returns rise over plan distance to the skyline [m/m]; -Infinity with no ground that way
 */
export function skylineTangents(ground: SweptGround, azimuthDeg: number): Float32Array {
  const hull = new Int32Array(Math.max(ground.frame.columns, ground.frame.rows))
  return sweepGround(ground, azimuthDeg, (line) => lookBack(line, hull), {
    nothing: -Infinity,
    areLevels: false,
  })
}

// Keeps the upper hull of the ground passed so far: the skyline of a place is the hull's end once lower ends are dropped.
function lookBack({ levelM, found, from, to, stepM }: SweptLine, hull: Int32Array): void {
  let size = 0
  for (let place = from; place < to; place += 1) {
    const level = levelM[place]!
    if (Number.isNaN(level)) continue
    let skyline = -Infinity
    while (size > 0) {
      const end = hull[size - 1]!
      const rise = (levelM[end]! - level) / (place - end)
      if (rise < skyline) break
      skyline = rise
      size -= 1
    }
    if (skyline > -Infinity) size += 1
    found[place] = skyline / stepM
    hull[size] = place
    size += 1
  }
}
