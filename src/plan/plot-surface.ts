import { surfaceFrom, type Surface } from '#core/survey'
import type { Outcome } from '#core/units'
import type { Plan } from './plan.schema'

/** The surface of a plan, and nothing that follows from it. */
export function plotSurface({ survey }: Pick<Plan, 'survey'>): Outcome<Surface> {
  return surfaceFrom(survey.ground, {
    boundary: survey.boundary,
    holes: survey.holes,
    cellM: survey.cellM,
  })
}
