import Delaunator from 'delaunator'
import { anticlockwise } from './anticlockwise'
import type { LevelPoint, Tin } from './geometry.types'

/**
 * Joins spot levels into triangles, each with no other point inside its circle (Delaunay).
 *
 * @param points - places with levels [m]; of two at one place only the first is used
 * @returns the triangles, corners anticlockwise; none when all points lie in one line
 */
export function triangulate(points: readonly LevelPoint[]): Tin {
  const origin = points[0]
  if (!origin) return { points, corners: new Uint32Array(0) }
  const places = new Float64Array(points.length * 2)
  points.forEach((point, at) => {
    places[2 * at] = point.eastM - origin.eastM
    places[2 * at + 1] = point.northM - origin.northM
  })
  return { points, corners: anticlockwise(points, new Delaunator(places).triangles) }
}
