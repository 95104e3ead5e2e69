import type { Surface } from '#core/survey'
import { groundFacts } from '#core/terrain'
import type { Outcome } from '#core/units'
import { createDeriver, plotSurface, sheddingBeyond, type Plan } from '#plan'
import type { GroundScene, Layer, LayerOptions, Scene } from './layer.types'
import { plotLight } from './plot-light'
import { loadTables } from './tables'

/** A layer's values and the cells they belong to. */
export interface DrawnLayer {
  readonly surface: Surface
  readonly values: ArrayLike<number>
}

/**
 * One layer of a plan, working out no more than it needs.
 *
 * @param layer - which
 * @param plan - the plan
 * @param options - what the person asks of it
 * @returns its values, or why the plan has none
 */
export function drawLayer(layer: Layer, plan: Plan, options: LayerOptions): Outcome<DrawnLayer> {
  if ('values' in layer) {
    const derived = createDeriver(loadTables()).derive(plan)
    if (!derived.ok) return derived
    const { surface } = derived.value
    return { ok: true, value: { surface, values: layer.values({ plan, findings: derived.value }, options) } }
  }
  const surfaced = plotSurface(plan)
  if (!surfaced.ok) return surfaced
  const surface = surfaced.value
  return { ok: true, value: { surface, values: layer.ofGround(groundOf(plan, surface), options) } }
}

/**
 * Values of a layer of a plan whose findings are there already.
 *
 * @param layer - which
 * @param scene - the plan and its findings
 * @param ground - its ground, from `groundOf`
 * @returns one value per cell
 */
export function valuesOf(layer: Layer, scene: Scene, ground: GroundScene): ArrayLike<number> {
  return 'values' in layer ? layer.values(scene, {}) : layer.ofGround(ground, {})
}

/**
 * The ground of a plan with facts and light that are worked out as they are asked for.
 *
 * @param plan - the plan
 * @param surface - its surface
 * @returns what layers of the ground are drawn from
 */
export function groundOf(plan: Plan, surface: Surface): GroundScene {
  const facts = groundFacts(surface, sheddingBeyond(plan.survey.beyond))
  return { plan, surface, facts, light: plotLight(plan, surface, facts) }
}
