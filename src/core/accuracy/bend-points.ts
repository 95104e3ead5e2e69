import type { PlanPoint, Tin } from '#core/geometry'
import type { LevelsSurvey } from '#core/survey'

/** Points nearer to a vertex than this stand for it [m]; cleaning may have moved one onto the other. */
const SAME_PLACE_M = 0.05

/**
 * Points that stand on lines where the ground is known to bend or step.
 *
 * @param tin - the triangles
 * @param ground - levels and lines
 * @returns numbers of the points in the triangles [count]
 */
export function bendPoints(tin: Tin, ground: LevelsSurvey): ReadonlySet<number> {
  const lines = ground.breaklines ?? []
  const taken = new Set(lines.flatMap(({ vertices }) => vertices.flatMap(around)))
  const found = new Set<number>()
  for (const [index, point] of tin.points.entries()) if (taken.has(squareOf(point, 0, 0))) found.add(index)
  return found
}

// The square of the plan a place lies in, or one beside it.
function squareOf({ eastM, northM }: PlanPoint, right: number, up: number): string {
  return `${Math.floor(eastM / SAME_PLACE_M) + right} ${Math.floor(northM / SAME_PLACE_M) + up}`
}

function around(point: PlanPoint): readonly string[] {
  const steps = [-1, 0, 1]
  return steps.flatMap((right) => steps.map((up) => squareOf(point, right, up)))
}
