import type { PlanPoint, Tin } from '#core/geometry'
import type { PlanStation } from './surveyed-ground.types'

/**
 * Triangles of a strip of ground: two corners at every station, two triangles between stations.
 *
 * @param stations - levels down the slope
 * @param halfM - half the width of the strip [m]
 * @param place - where a plan distance and a distance across the slope lie [m]
 * @returns the triangles
 */
export function triangulateStrip(
  stations: readonly PlanStation[],
  halfM: number,
  place: (planM: number, acrossM: number) => PlanPoint,
): Tin {
  const points = stations.flatMap(({ planM, levelM }) => [
    { ...place(planM, halfM), levelM },
    { ...place(planM, -halfM), levelM },
  ])
  const corners = new Uint32Array(Math.max(0, stations.length - 1) * 6)
  for (let piece = 0; piece + 1 < stations.length; piece++) {
    const near = piece * 2
    corners.set([near, near + 1, near + 3, near, near + 3, near + 2], piece * 6)
  }
  return { points, corners }
}
