import { accuracyOf, measuringErrors, type Accuracy, type MeasuringErrors } from '#core/accuracy'
import { climateYear, sunRatios, type MonthClimate } from '#core/climate'
import { ruralLinke, sunOnGround, type SunOnGround } from '#core/sun'
import type { Surface } from '#core/survey'
import { sectionProblem, terrainOf, type Terrain } from '#core/terrain'
import type { Outcome, Twelve } from '#core/units'
import type { Step } from './derive'
import type { Plan } from './plan.schema'
import { plotSurface } from './plot-surface'
import { sheddingBeyond } from './shedding-beyond'
import type { Tables } from './tables.types'
import type { Means } from './zone-stages'

/** Share of light that grass and soil throw back [1]; common practice (Duffie & Beckman give 0.2 for ground without snow). */
export const GROUND_ALBEDO = 0.2

/** Ground and sky: what every zone stands on. */
export interface Ground {
  readonly surface: Surface
  readonly terrain: Terrain
  readonly accuracy: Accuracy
  readonly sun: SunOnGround
  readonly climate: Twelve<MonthClimate>
  /** Real-sky radiation over open level ground, per m² of plan, one value per cell [ratio]. */
  readonly sunRatio: Twelve<Float32Array>
}

/** Surface, terrain, sun and climate of a plan. */
export function* groundStages(plan: Plan, { tables, memory }: Means): Generator<Step, Outcome<Ground>> {
  const { site, survey } = plan
  yield { stage: 'surface', done: 0 }
  const surfaced = memory.run('surface', [survey.ground, survey.boundary, survey.holes, survey.cellM], () =>
    plotSurface(plan),
  )
  if (!surfaced.ok) return surfaced
  const surface = surfaced.value
  const misplaced = survey.sectionLine && sectionProblem(surface, survey.sectionLine)
  if (misplaced) return { ok: false, problems: [misplaced] }
  yield { stage: 'terrain', done: 0.1 }
  const terrain = memory.run('terrain', [surface, survey.sectionLine, survey.beyond], () =>
    terrainOf(surface, survey.sectionLine, sheddingBeyond(survey.beyond)),
  )
  const accuracy = memory.run('accuracy', [surface, terrain, survey.ground, survey.accuracy], () =>
    accuracyOf(surface, terrain, survey.ground, measuringOf(plan, tables)),
  )
  yield { stage: 'sun', done: 0.25 }
  const { latitudeDeg, elevationM } = site
  const sun = memory.run('sun', [surface, terrain, latitudeDeg, elevationM], () =>
    sunOnGround(surface, terrain, {
      latitudeDeg,
      elevationM,
      linke: ruralLinke(latitudeDeg),
      albedo: GROUND_ALBEDO,
    }),
  )
  yield { stage: 'climate', done: 0.6 }
  const climate = memory.run('climate', [plan.climate, site], () => climateYear(plan.climate, site))
  const sunRatio = memory.run('sun-ratio', [sun, climate, terrain], () =>
    sunRatios(sun, climate, terrain.slopeDeg, GROUND_ALBEDO),
  )
  return { ok: true, value: { surface, terrain, accuracy, sun, climate, sunRatio } }
}

/** How well the points of a plan were measured. */
export function measuringOf({ survey }: Plan, tables: Tables): MeasuringErrors {
  return measuringErrors(survey.ground, survey.accuracy, {
    methods: tables.survey.methods,
    assumed: tables.assumed,
  })
}
