import type { PlanPoint } from './geometry.types'

/** A corner that says nothing of the line's shape. */
export interface SpareCorner {
  /** Its place in the line as given, from 0 [count]. */
  readonly at: number
  /** `repeat`: at the place of the corner before; `spike`: the line goes there and doubles back. */
  readonly why: 'repeat' | 'spike'
}

/** A line that turns back more sharply than this doubles back [°]; own judgement: no outline has such a corner. */
const SPIKE_DEG = 1

/**
 * Corners of a line or outline that repeat the one before, or at which it doubles back on itself.
 *
 * @param line - corners in order [m]
 * @param closed - whether the last corner is joined to the first
 * @param toleranceM - how far apart corners still are the same [m], more than 0
 * @returns the spare corners in the order they were found; without them none is left
 */
export function spareCorners(line: readonly PlanPoint[], closed: boolean, toleranceM: number): SpareCorner[] {
  const spare: SpareCorner[] = []
  const kept: number[] = []
  const place = (at: number | undefined) => (at === undefined ? undefined : line[at])
  // Takes corners off the end of what is kept until its last corner says something.
  const settle = () => {
    for (;;) {
      const why = whySpare(place(kept.at(-3)), place(kept.at(-2)), place(kept.at(-1)), toleranceM)
      if (!why) return
      const [last] = kept.splice(why === 'repeat' ? -1 : -2, 1)
      spare.push({ at: last!, why })
    }
  }
  line.forEach((_, at) => {
    kept.push(at)
    settle()
  })
  return closed ? [...spare, ...spareAtJoin(line, kept, toleranceM)] : spare
}

/**
 * A line without its spare corners.
 *
 * @param line - corners in order, of any kind
 * @param spare - the corners to leave out
 * @returns the corners that are left, with their places in the line as given
 */
export function withoutSpare<Corner>(
  line: readonly Corner[],
  spare: readonly SpareCorner[],
): { readonly corner: Corner; readonly at: number }[] {
  const gone = new Set(spare.map(({ at }) => at))
  return line.flatMap((corner, at) => (gone.has(at) ? [] : [{ corner, at }]))
}

function whySpare(
  before: PlanPoint | undefined,
  corner: PlanPoint | undefined,
  after: PlanPoint | undefined,
  toleranceM: number,
): SpareCorner['why'] | undefined {
  if (!corner || !after) return undefined
  if (gapM(corner, after) <= toleranceM) return 'repeat'
  return before && turnsBack(before, corner, after) ? 'spike' : undefined
}

function turnsBack(before: PlanPoint, corner: PlanPoint, after: PlanPoint): boolean {
  const [inEast, inNorth] = [before.eastM - corner.eastM, before.northM - corner.northM]
  const [outEast, outNorth] = [after.eastM - corner.eastM, after.northM - corner.northM]
  const across = Math.abs(inEast * outNorth - inNorth * outEast)
  const along = inEast * outEast + inNorth * outNorth
  return along > 0 && across <= Math.tan((SPIKE_DEG * Math.PI) / 180) * along
}

// Where an outline closes, its last corners meet its first.
function spareAtJoin(line: readonly PlanPoint[], kept: number[], toleranceM: number): SpareCorner[] {
  const spare: SpareCorner[] = []
  const place = (at: number | undefined) => (at === undefined ? undefined : line[at])
  for (;;) {
    const first = place(kept[0])
    const last = whySpare(place(kept.at(-2)), place(kept.at(-1)), first, toleranceM)
    if (last && kept.length > 1) {
      spare.push({ at: kept.pop()!, why: last })
      continue
    }
    const why = kept.length > 2 && whySpare(place(kept.at(-1)), first, place(kept[1]), toleranceM)
    if (why !== 'spike') return spare
    spare.push({ at: kept.shift()!, why })
  }
}

function gapM(one: PlanPoint, other: PlanPoint): number {
  return Math.hypot(one.eastM - other.eastM, one.northM - other.northM)
}
