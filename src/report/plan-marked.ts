import { ringStretch, type Ring } from '#core/geometry'
import type { Plan } from '#plan'
import type { PlanMarked } from './section-view.types'

/**
 * What was measured and marked in plan, as the map and the printed plan show it.
 *
 * @param plan - the plan
 * @param boundary - outline of the plot [m]
 */
export function planMarked({ survey }: Plan, boundary: Ring): PlanMarked {
  const { ground } = survey
  const lines = ground.kind === 'levels' ? (ground.breaklines ?? []) : []
  return {
    levels: ground.kind === 'levels' ? ground.points : [],
    breaklines: lines.map(({ kind, name, vertices }) => ({ kind, name: name ?? '', line: vertices })),
    holes: survey.holes ?? [],
    sections: survey.sections ?? [],
    viewpoints: survey.viewpoints ?? [],
    beyond: (survey.beyond ?? []).map(({ what, name, from, to }) => ({
      kind: what,
      name,
      line: ringStretch(boundary, from, to),
    })),
    backdrop: survey.backdrop,
  }
}
