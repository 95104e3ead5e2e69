import type { PlanPoint } from '#core/geometry'
import type { Outcome } from '#core/units'
import type { Obstacle, Plan } from '#plan'
import { gone } from './refused'
import { ringRefusal } from './rings'
import { fitted } from './thing-fields'
import { trialsFitting, trialsWithout } from './trials-of-things'
import { changedAt, freeId, without, withSurvey } from './with-survey'

/** How a thing lies in plan. */
export type Lie = 'point' | 'line' | 'outline'

/** What may stand on or beside a plot, and how it lies. */
export const thingKinds: readonly {
  readonly id: Obstacle['kind']
  readonly text: string
  readonly lies: Lie
  /** What the first of them is called, where that is not the text. */
  readonly called?: string
}[] = [
  { id: 'house', text: 'house', lies: 'outline' },
  { id: 'building', text: 'shed or neighbour’s building', lies: 'outline', called: 'building' },
  { id: 'wall', text: 'wall', lies: 'line' },
  { id: 'fence', text: 'fence', lies: 'line' },
  { id: 'hedge', text: 'hedge', lies: 'line' },
  { id: 'tree', text: 'tree', lies: 'point' },
  { id: 'path', text: 'path', lies: 'line' },
  { id: 'paving', text: 'paving', lies: 'outline' },
  { id: 'drain', text: 'drain', lies: 'line' },
  { id: 'downpipe', text: 'downpipe', lies: 'point' },
  { id: 'spring', text: 'spring', lies: 'point' },
  { id: 'services', text: 'pipes and cables', lies: 'line' },
]

/** Half the side of a thing put down without its corners [m]. */
const HALF_M = 2

/** Corners for a thing put down in one place, to be moved afterwards. */
export function firstCorners(lies: Lie, { eastM, northM }: PlanPoint): PlanPoint[] {
  const at = (east: number, north: number) => ({
    eastM: eastM + east * HALF_M,
    northM: northM + north * HALF_M,
  })
  if (lies === 'point') return [at(0, 0)]
  return lies === 'line' ? [at(-1, 0), at(1, 0)] : [at(-1, -1), at(1, -1), at(1, 1), at(-1, 1)]
}

/** The plan with one more thing, named after its kind. */
export function addThing(plan: Plan, kind: Obstacle['kind'], ring: readonly PlanPoint[]): Outcome<Plan> {
  const { obstacles } = plan.survey
  const of = thingKinds.find(({ id }) => id === kind)
  const called = of?.called ?? of?.text ?? kind
  const number = obstacles.filter((each) => each.kind === kind).length + 1
  const name = `${called.charAt(0).toUpperCase()}${called.slice(1)}${number > 1 ? ` ${number}` : ''}`
  const thing: Obstacle = { id: freeId(obstacles, kind), kind, name, ring: [...ring] }
  return shapeRefusal(thing) ?? withSurvey(plan, { obstacles: [...obstacles, thing] })
}

/** The plan with a thing changed; what no longer fits what it is goes, in trials too. */
export function setThing(plan: Plan, id: string, change: Partial<Obstacle>): Outcome<Plan> {
  const { obstacles } = plan.survey
  const at = obstacles.findIndex((each) => each.id === id)
  const before = obstacles[at]
  if (!before) return gone('thing')
  const became = change.kind !== undefined || change.leaf !== undefined
  const thing = became ? laidAsKind(fitted({ ...before, ...change })) : { ...before, ...change }
  const refusal = change.ring ? shapeRefusal(thing) : undefined
  const trials = became ? trialsFitting(plan.trials, thing) : plan.trials
  return refusal ?? withSurvey(withTrials(plan, trials), { obstacles: changedAt(obstacles, at, thing) })
}

/** The plan without a thing, and without what was tried on it. */
export function removeThing(plan: Plan, id: string): Outcome<Plan> {
  const { obstacles } = plan.survey
  const at = obstacles.findIndex((each) => each.id === id)
  if (at === -1) return gone('thing')
  return withSurvey(withTrials(plan, trialsWithout(plan.trials, id)), { obstacles: without(obstacles, at) })
}

const withTrials = (plan: Plan, trials: Plan['trials']): Plan => (trials ? { ...plan, trials } : plan)

/** A point that becomes a wall or a house gets corners, as if it were put down there. */
function laidAsKind(thing: Obstacle): Obstacle {
  const lies = thingKinds.find(({ id }) => id === thing.kind)?.lies ?? 'point'
  const [first] = thing.ring
  if (!first || thing.ring.length >= LEAST_CORNERS[lies]) return thing
  return { ...thing, ring: firstCorners(lies, first) }
}

const LEAST_CORNERS: Readonly<Record<Lie, number>> = { point: 1, line: 2, outline: 3 }

/** It is a line or a point, not an outline: things surveyed along their middle are lines however many corners they have. */
export const linesUp = ({ kind, ring }: Pick<Obstacle, 'kind' | 'ring'>): boolean =>
  ring.length < 3 || thingKinds.some(({ id, lies }) => id === kind && lies === 'line')

/** Houses and paving are outlines as soon as they have three corners. */
function shapeRefusal({ kind, name, ring }: Obstacle): Outcome<never> | undefined {
  const outline = thingKinds.some(({ id, lies }) => id === kind && lies === 'outline')
  return outline && ring.length > 2 ? ringRefusal(name, ring) : undefined
}
