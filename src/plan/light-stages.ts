import { sunOnGround, zoneSun, type SunOnGround, type ZoneSun } from '#core/shade'
import { northernTwin, type Month } from '#core/units'
import type { Step } from './derive'
import type { TrialFindings } from './findings.types'
import { standingAt, type Ground } from './ground-stages'
import type { Plan, Trial } from './plan.schema'
import { shadingOf } from './shading-of'
import { trialThings } from './trial-things'
import { trialWords } from './trial-words'
import type { Means, ZonedGround } from './zone-stages'

/** Sun of the zones, as things stand and as trials would have them. */
export interface ZonedLight {
  readonly zoneSun: readonly ZoneSun[]
  readonly trials: readonly TrialFindings[]
}

type Zoned = Ground & Pick<ZonedGround, 'zoning'>

/** How far the work has come before the trials, and after them [0 to 1]. */
const TRIALS_FROM = 0.78
const TRIALS_TO = 0.86

/** Sun of each zone, and every trial: what an earlier run found stands as long as nothing that it rests on changes. */
export function* lightStages(plan: Plan, ground: Zoned, means: Means): Generator<Step, ZonedLight> {
  const { memory } = means
  const { zoning, sun, standing } = ground
  const inputs = [zoning, sun, standing]
  yield { stage: 'zone-sun', done: 0.74 }
  const now = memory.run('zone-sun', inputs, () => sunOfZones(plan, ground, means, { sun, standing }))
  const planned = plan.trials ?? []
  memory.forget(
    'trial:',
    planned.map(({ id }) => trialName(id)),
  )
  const trials: TrialFindings[] = []
  for (const [at, trial] of planned.entries()) {
    yield { stage: 'trials', done: TRIALS_FROM + ((TRIALS_TO - TRIALS_FROM) * at) / planned.length }
    trials.push(trialOf(plan, ground, means, trial))
  }
  return { zoneSun: now, trials }
}

// Closed by a colon, so that no name is the beginning of another.
const trialName = (id: string): string => `trial:${id}:`

/** Cells of a plot up to which the sun of a trial is kept, so that new zones need no new sun: about 50 MB a trial [count]. */
const KEPT_CELLS = 250_000

function trialOf(plan: Plan, ground: Zoned, means: Means, planned: Trial): TrialFindings {
  const { memory, tables } = means
  const { surface, terrain, sky, skylines, zoning, sun } = ground
  const { latitudeDeg } = plan.site
  const name = (part: string) => `${trialName(planned.id)}${part}`
  const changes = memory.keep(name('changes'), planned.changes)
  const { obstacles, skyline } = plan.survey
  const things = memory.run(name('things'), [obstacles, changes], () => trialThings(obstacles, changes))
  const standing = standingAt(plan, surface, things, { ...means, name: name('standing') })
  const sunInputs = [surface, terrain, standing, skyline, sky]
  const makeSun = () => sunOnGround(shadingOf(plan, { surface, standing }), terrain, sky, skylines)
  const trialSun = () =>
    surface.share.length > KEPT_CELLS ? makeSun() : memory.run(name('sun'), sunInputs, makeSun)
  const light = memory.run(name('light'), [...sunInputs, zoning, sun], () => {
    const changed = trialSun()
    return {
      zoneSun: sunOfZones(plan, ground, means, { sun: changed, standing }),
      midsummerGainH: gain(changed, sun, northernTwin(NORTHERN_MIDSUMMER, latitudeDeg)),
    }
  })
  return {
    trialId: planned.id,
    name: planned.name,
    changes: trialWords(obstacles, planned, tables.shade),
    ...light,
  }
}

function sunOfZones(
  plan: Plan,
  { surface, terrain, sky, skylines, zoning }: Zoned,
  { tables }: Means,
  { sun, standing }: Pick<Ground, 'sun' | 'standing'>,
): readonly ZoneSun[] {
  return zoneSun(shadingOf(plan, { surface, standing }), terrain, sky, {
    zoneOfCell: zoning.zoneOfCell,
    count: zoning.zones.length,
    sun,
    skylines,
    classes: tables.shade.lightClasses,
  })
}

/** Midsummer's month in the north: June. */
const NORTHERN_MIDSUMMER: Month = 5

function gain(after: SunOnGround, before: SunOnGround, month: Month): Float32Array {
  return after.sunHours[month].map((hours, cell) => hours - (before.sunHours[month][cell] ?? 0))
}
