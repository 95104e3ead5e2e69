import { accuracyOf, measuringErrors, type Accuracy, type MeasuringErrors } from '#core/accuracy'
import { climateYear, type MonthClimate } from '#core/climate'
import {
  skylinesAround,
  standingOf,
  sunOnGround,
  sunRatios,
  type Skylines,
  type Standing,
  type SunOnGround,
  type YearSky,
} from '#core/shade'
import { ruralLinke, type SunSite, type UsualDay } from '#core/sun'
import type { Surface } from '#core/survey'
import { sectionProblem, terrainOf, type Terrain } from '#core/terrain'
import { eachMonth, type Outcome, type Twelve } from '#core/units'
import type { Step } from './derive'
import type { Plan } from './plan.schema'
import { plotSurface } from './plot-surface'
import { shadingOf } from './shading-of'
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
  /** What stands in the light. */
  readonly standing: readonly Standing[]
  /** Skylines of the ground alone. */
  readonly skylines: Skylines
  /** Place, air and usual sky that the sun was reckoned with. */
  readonly sky: YearSky
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
  yield { stage: 'climate', done: 0.2 }
  const climate = memory.run('climate', [plan.climate, site], () => climateYear(plan.climate, site))
  const { latitudeDeg, elevationM } = site
  const sky = memory.run('sky', [climate, latitudeDeg, elevationM], () => ({
    site: sunSite(plan),
    usual: usualSky(climate),
  }))
  yield { stage: 'skyline', done: 0.22 }
  const skylines = memory.run('skylines', [surface], () => skylinesAround(surface))
  yield { stage: 'sun', done: 0.35 }
  const standing = standingAt(plan, surface, survey.obstacles, { tables, memory, name: 'standing' })
  const sun = memory.run('sun', [surface, terrain, standing, survey.skyline, sky], () =>
    sunOnGround(shadingOf(plan, { surface, standing }), terrain, sky, skylines),
  )
  const sunRatio = memory.run('sun-ratio', [sun, terrain], () => sunRatios(sun, terrain.slopeDeg))
  const value = { surface, terrain, accuracy, sun, standing, skylines, sky, climate, sunRatio }
  return { ok: true, value }
}

/** Tables, memory, and the name that a stage is remembered by. */
export interface NamedMeans extends Means {
  readonly name: string
}

/** What stands in the light of some things; the same as before when only what takes no light changed. */
export function standingAt(
  { site }: Plan,
  surface: Surface,
  things: Plan['survey']['obstacles'],
  { tables, memory, name }: NamedMeans,
): readonly Standing[] {
  const standing = memory.run(name, [surface, things, site.latitudeDeg], () =>
    standingOf(things, surface, tables.shade, site.latitudeDeg),
  )
  return memory.keep(name, standing)
}

/** Place and air of a plan, as the sun's reckoning takes them. */
export function sunSite({
  site,
}: {
  readonly site: Pick<Plan['site'], 'latitudeDeg' | 'elevationM'>
}): SunSite {
  const { latitudeDeg, elevationM } = site
  return { latitudeDeg, elevationM, linke: ruralLinke(latitudeDeg), albedo: GROUND_ALBEDO }
}

/** Watt-hours of a megajoule [Wh/MJ]. */
const WH_PER_MJ = 1e6 / 3600

/** What the usual sky lets through to open level ground. */
export function usualSky(climate: Twelve<MonthClimate>): Twelve<UsualDay> {
  return eachMonth((month) => ({
    levelWhPerM2: climate[month].solarMjPerM2 * WH_PER_MJ,
    diffuseShare: climate[month].diffuseShare,
  }))
}

/** How well the points of a plan were measured. */
export function measuringOf({ survey }: Plan, tables: Tables): MeasuringErrors {
  return measuringErrors(survey.ground, survey.accuracy, {
    methods: tables.survey.methods,
    assumed: tables.assumed,
  })
}
