import { MOST_HANDLES } from '../components/plan/map-handles'
import type { Placed, PutKind } from '../edits/subject.types'
import type { PlacedWork } from './usePlacedPick'

const SNAPS = 'Within 10 px it takes a point that is already there.'
const DRAWS = {
  point: 'Touch the plan where it is, or give its figures.',
  pair: 'Touch the plan at its two ends, or give their figures.',
  line: 'Touch the plan at its points in order, then finish.',
  outline: 'Touch the plan at its corners in order, then finish.',
} as const

/** What to do next on the plan, in a sentence. */
export function placedHint(
  { subject, plan }: PlacedWork,
  adding: PutKind | undefined,
  picked: Placed | undefined,
): string {
  const missing = subject()?.missing(plan())
  if (missing) return missing
  if (adding) return `${DRAWS[adding.lies]} ${SNAPS}`
  if (!picked) return 'Touch one on the plan to pick it, or step through them.'
  if (picked.ring.length > MOST_HANDLES)
    return `It has ${picked.ring.length} points: change them in the table.`
  return `Drag a mark, or move it with the arrow keys: 0.1 m, with Shift 1 m. ${SNAPS}`
}
