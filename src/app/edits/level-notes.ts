import type { PlanPoint } from '#core/geometry'
import type { SurfaceNote } from '#core/survey'

/** A note is about the level that stands this near to its place [m]. */
const SAME_PLACE_M = 0.02

/** Notes of the surface, sorted to the levels they are about. */
export interface SortedNotes {
  readonly byRow: ReadonlyMap<number, readonly string[]>
  /** What is about no single level. */
  readonly others: readonly string[]
}

/**
 * Sorts what was cleaned up or looks odd to the rows of the field book it is about.
 *
 * @param points - the levels, in rows
 * @param notes - what the surface says of them
 */
export function sortNotes(points: readonly PlanPoint[], notes: readonly SurfaceNote[]): SortedNotes {
  const byRow = new Map<number, string[]>()
  const others: string[] = []
  for (const { what, at } of notes) {
    const row = at ? points.findIndex((point) => apartM(point, at) <= SAME_PLACE_M) : -1
    if (row === -1) others.push(what)
    else byRow.set(row, [...(byRow.get(row) ?? []), what])
  }
  return { byRow, others }
}

const apartM = (one: PlanPoint, other: PlanPoint): number =>
  Math.hypot(one.eastM - other.eastM, one.northM - other.northM)
