import type { Shading } from '#core/shade'
import type { Findings } from './findings.types'
import type { Plan } from './plan.schema'

/** Everything that can take the sun away on a plan: its ground, what stands there, and far hills. */
export function shadingOf(
  { survey }: Pick<Plan, 'survey'>,
  { surface, standing }: Pick<Findings, 'surface' | 'standing'>,
): Shading {
  return { ground: surface, standing, far: survey.skyline ?? [] }
}
