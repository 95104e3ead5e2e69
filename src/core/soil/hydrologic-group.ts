export type HydrologicGroup = 'A' | 'B' | 'C' | 'D'

/** Depth to rock or pan below which a soil sheds water whatever its grains, and above which it counts as deep [m]: NEH 630 table 7-1. */
const SHALLOW_M = 0.5
const DEEP_M = 1

/** Millimetres an hour in one micrometre a second [(mm/h)/(µm/s)]. */
const MM_PER_H_IN_UM_PER_S = 3.6

/** Least conductivity of groups A, B and C [µm/s]: NEH 630 table 7-1. */
const limits = {
  deep: { A: 10, B: 4, C: 0.4 },
  middling: { A: 40, B: 10, C: 1 },
} as const

/**
 * Hydrologic soil group: how readily a wet soil sheds rain, A (least) to D (most).
 *
 * No water table is known, so none is taken within 1 m of the surface.
 *
 * @param conductivityMmPerH - saturated conductivity of the least open layer [mm/h], 0 or more
 * @param depthM - depth to rock or pan [m], above 0
 * @returns the group
 * @throws RangeError when an input is outside its range
 * @see NEH 630 ch. 7 (2009), table 7-1
 */
export function hydrologicGroup(conductivityMmPerH: number, depthM: number): HydrologicGroup {
  if (!(conductivityMmPerH >= 0))
    throw new RangeError(`hydrologicGroup: conductivityMmPerH must be 0 or more, got ${conductivityMmPerH}`)
  if (!(depthM > 0)) throw new RangeError(`hydrologicGroup: depthM must be above 0, got ${depthM}`)
  if (depthM < SHALLOW_M) return 'D'
  const limit = depthM < DEEP_M ? limits.middling : limits.deep
  const umPerS = conductivityMmPerH / MM_PER_H_IN_UM_PER_S
  if (umPerS > limit.A) return 'A'
  if (umPerS > limit.B) return 'B'
  return umPerS > limit.C ? 'C' : 'D'
}
