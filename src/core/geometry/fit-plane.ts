import type { LevelPoint } from './geometry.types'
import type { Plane } from './tin-over-grid'

/** Below this share of the longer spread the places lie in one line [m²/m²]. */
const LINE_SHARE = 1e-12

/**
 * The plane nearest to some levels (least squares of the level differences).
 *
 * @param points - places with levels [m], each with its weight [any unit], 0 or more; 1 when left out
 * @returns the plane; undefined when the places lie in one line or are fewer than three
 */
export function fitPlane(points: readonly (LevelPoint & { readonly weight?: number })[]): Plane | undefined {
  const through = middle(points)
  if (!through || points.length < 3) return undefined
  let [xx, xy, yy, xz, yz] = [0, 0, 0, 0, 0]
  for (const point of points) {
    const weight = point.weight ?? 1
    const x = point.eastM - through.eastM
    const y = point.northM - through.northM
    const z = point.levelM - through.levelM
    xx += weight * x * x
    xy += weight * x * y
    yy += weight * y * y
    xz += weight * x * z
    yz += weight * y * z
  }
  const determinant = xx * yy - xy * xy
  if (!(determinant > LINE_SHARE * (xx + yy) * (xx + yy))) return undefined
  return {
    through,
    eastGradient: (xz * yy - yz * xy) / determinant,
    northGradient: (yz * xx - xz * xy) / determinant,
  }
}

function middle(points: readonly (LevelPoint & { readonly weight?: number })[]): LevelPoint | undefined {
  let [total, eastM, northM, levelM] = [0, 0, 0, 0]
  for (const point of points) {
    const weight = point.weight ?? 1
    total += weight
    eastM += weight * point.eastM
    northM += weight * point.northM
    levelM += weight * point.levelM
  }
  if (!(total > 0)) return undefined
  return { eastM: eastM / total, northM: northM / total, levelM: levelM / total }
}
