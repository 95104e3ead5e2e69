import type { Outcome } from '#core/units'
import type { Findings } from './findings.types'
import type { Plan } from './plan.schema'
import type { Tables } from './tables.types'
import { groundStages, type Ground } from './ground-stages'
import { inputProblems } from './input-problems'
import { lightStages } from './light-stages'
import { plotStages } from './plot-stages'
import { stageMemory, type StageMemory } from './stages'
import { zoneStages } from './zone-stages'

/** Told before each stage: what is about to be worked out, and how much is done, 0 to 1. */
export interface Step {
  readonly stage: string
  readonly done: number
}

/** Works findings out of plans, and remembers what did not change from one plan to the next. */
export interface Deriver {
  /** All at once. */
  derive(plan: Plan): Outcome<Findings>
  /** A stage at a time; the last value is the outcome. */
  steps(plan: Plan): Generator<Step, Outcome<Findings>>
}

/**
 * A deriver with an empty memory.
 *
 * @param tables - every table of data/
 * @returns the deriver; the same plan gives the same findings, whatever came before
 */
export function createDeriver(tables: Tables): Deriver {
  const memory = stageMemory()
  return {
    steps: (plan) => deriveSteps(kept(plan, memory), tables, memory),
    derive: (plan) => {
      const steps = deriveSteps(kept(plan, memory), tables, memory)
      for (;;) {
        const step = steps.next()
        if (step.done) return step.value
      }
    },
  }
}

/** The plan with every part that is alike to last time's replaced by last time's, so that stages know it again. */
function kept(plan: Plan, memory: StageMemory): Plan {
  const { survey } = plan
  return {
    ...plan,
    site: memory.keep('site', plan.site),
    climate: memory.keep('climate', plan.climate),
    survey: {
      ...survey,
      ground: memory.keep('ground', survey.ground),
      obstacles: memory.keep('obstacles', survey.obstacles),
      ...(survey.beyond && { beyond: memory.keep('beyond', survey.beyond) }),
      ...(survey.viewpoints && { viewpoints: memory.keep('viewpoints', survey.viewpoints) }),
      ...(survey.accuracy && { accuracy: memory.keep('measuring', survey.accuracy) }),
      ...(survey.skyline && { skyline: memory.keep('far-skyline', survey.skyline) }),
      ...(survey.holes && { holes: memory.keep('holes', survey.holes) }),
      ...(survey.sections && { sections: memory.keep('sections-drawn', survey.sections) }),
      ...(survey.boundary && { boundary: memory.keep('boundary', survey.boundary) }),
      ...(survey.sectionLine && { sectionLine: memory.keep('section', survey.sectionLine) }),
    },
    soil: memory.keep('soil', plan.soil),
    zones: memory.keep('zones', plan.zones),
    brief: memory.keep('brief', plan.brief),
    choices: memory.keep('choices', plan.choices),
    overrides: memory.keep('overrides', plan.overrides),
    ...(plan.trials && { trials: memory.keep('trials', plan.trials) }),
  }
}

function* deriveSteps(plan: Plan, tables: Tables, memory: StageMemory): Generator<Step, Outcome<Findings>> {
  const problems = inputProblems(plan, tables)
  if (problems.length > 0) return { ok: false, problems }
  const ground: Outcome<Ground> = yield* groundStages(plan, { tables, memory })
  if (!ground.ok) return ground
  const zones = yield* zoneStages(plan, ground.value, { tables, memory })
  if (!zones.ok) return zones
  const zoned = { ...ground.value, ...zones.value }
  const light = yield* lightStages(plan, zoned, { tables, memory })
  return { ok: true, value: yield* plotStages(plan, { ...zoned, ...light }, { tables, memory }) }
}
