import { distanceToSegmentM, type LevelPoint } from '#core/geometry'
import type { Section } from '#core/terrain'
import type { Findings, Plan } from '#plan'
import type { MeasuredMark } from './section-view.types'

/** Levels no further beside the section than this are shown on it [m]; own judgement, about a pace. */
const BESIDE_M = 0.75

/** More marks than this would hide the ground they stand on [count]. */
const MOST_MARKS = 80

/**
 * The measured levels on the section or a pace beside it, from the top down; none where the ground is a grid, or more
 * than can be told apart.
 */
export function measuredOn(plan: Plan, { surface, terrain }: Findings, footLevelM: number): MeasuredMark[] {
  const points = plan.survey.ground.kind === 'grid' ? [] : (surface.tin?.points ?? [])
  const { section } = terrain
  const marks = points
    .filter((point) => distanceToSegmentM(point, section.from, section.to) <= besideM(plan))
    .map((point) => markOf(point, section, footLevelM))
    .filter(({ distanceM }) => distanceM >= 0 && distanceM <= section.lengthM)
    .sort((one, other) => one.distanceM - other.distanceM)
  const apart = marks.filter(
    ({ distanceM, heightM }, at) =>
      distanceM !== marks[at - 1]?.distanceM || heightM !== marks[at - 1]?.heightM,
  )
  return apart.length > MOST_MARKS ? [] : apart
}

// The stations of a bank or profile hold over its whole width.
function besideM({ survey: { ground } }: Plan): number {
  return ground.kind === 'bank' || ground.kind === 'profile' ? ground.widthM : BESIDE_M
}

function markOf(point: LevelPoint, { from, to, lengthM }: Section, footLevelM: number): MeasuredMark {
  const [east, north] = [to.eastM - from.eastM, to.northM - from.northM]
  const alongM = ((point.eastM - from.eastM) * east + (point.northM - from.northM) * north) / lengthM
  // A station at the very edge lies on the end of the section but for rounding.
  const distanceM = Math.round(alongM * 1000) / 1000 + 0
  return { distanceM, heightM: point.levelM - footLevelM }
}
