import type { Outcome } from '#core/units'
import type { Obstacle, Plan } from '#plan'
import { gone, refused } from './refused'
import { fieldsOf, takesLight } from './thing-fields'
import { removeThing, setThing } from './things'
import type { Trial, TrialChange } from './trials-of-things'
import { changedAt, freeId, without } from './with-survey'

/** One thing that a trial does to one thing that stands. */
export interface TrialPart {
  readonly thingId: string
  readonly way: TrialWay
  /** What the figure becomes; none where the thing is taken away. */
  readonly value: number | undefined
}

export type TrialWay = Exclude<keyof TrialChange, 'thingId'>

/** Most trials of a plan, and most things that one changes, as the plan's schema has them. */
const MOST_TRIALS = 6
const MOST_CHANGES = 20
/** Longest name, as the schema has it. */
const LONGEST_NAME = 80

/** What may be tried on a thing, in words that go on after its name. */
const ways: readonly { readonly way: TrialWay; readonly done: string }[] = [
  { way: 'gone', done: 'taken away' },
  { way: 'heightM', done: 'of another height' },
  { way: 'ridgeM', done: 'with another ridge' },
  { way: 'crownBaseM', done: 'with its crown lifted' },
  { way: 'crownWidthM', done: 'with another crown' },
  { way: 'leafyLight', done: 'thinned' },
  { way: 'bareLight', done: 'thinned in winter' },
]

/** What may be tried on this thing; nothing where it takes no light. */
export function waysFor(thing: Pick<Obstacle, 'kind' | 'leaf'>): readonly TrialWay[] {
  const fields: readonly string[] = fieldsOf(thing)
  return ways
    .map(({ way }) => way)
    .filter((way) => fields.includes(way) || (way === 'gone' && takesLight(thing)))
}

/** The plan with one more trial, named after what it does. */
export function addTrial(plan: Plan, part: TrialPart): Outcome<Plan> {
  const trials = plan.trials ?? []
  const thing = thingOf(plan, part.thingId)
  if (!thing) return gone('thing')
  if (trials.length >= MOST_TRIALS)
    return refused('trials', `There are ${MOST_TRIALS} trials already.`, 'Take one out, or make it so.')
  const fault = partFault(thing, part)
  if (fault) return fault
  const name = nameFor(trials, thing, part)
  const trial = { id: freeId(trials, 'trial'), name, changes: [changeWith({ thingId: thing.id }, part)] }
  return { ok: true, value: { ...plan, trials: [...trials, trial] } }
}

/** The plan with one more change in a trial, or with a figure of it changed. */
export function setPart(plan: Plan, trialId: string, part: TrialPart): Outcome<Plan> {
  const thing = thingOf(plan, part.thingId)
  const fault = thing ? partFault(thing, part) : gone('thing')
  if (fault) return fault
  return withTrial(plan, trialId, (trial) => {
    const at = trial.changes.findIndex(({ thingId }) => thingId === part.thingId)
    const before = trial.changes[at]
    if (before) return done({ ...trial, changes: changedAt(trial.changes, at, changeWith(before, part)) })
    if (trial.changes.length >= MOST_CHANGES)
      return refused(trial.name, `It changes ${MOST_CHANGES} things already.`, 'Begin another trial.')
    return done({ ...trial, changes: [...trial.changes, changeWith({ thingId: part.thingId }, part)] })
  })
}

/** The plan with one part of a trial left out; a trial of nothing goes altogether. */
export function removePart(
  plan: Plan,
  trialId: string,
  { thingId, way }: Omit<TrialPart, 'value'>,
): Outcome<Plan> {
  return withTrial(plan, trialId, (trial) => {
    const changes = trial.changes.flatMap((change) => {
      if (change.thingId !== thingId) return [change]
      const left = Object.entries(change).filter(([key]) => key !== way)
      return left.length > 1 ? [Object.fromEntries(left) as TrialChange] : []
    })
    return done(changes.length > 0 ? { ...trial, changes } : undefined)
  })
}

/** The plan with a trial under another name. */
export const renameTrial = (plan: Plan, trialId: string, name: string): Outcome<Plan> =>
  withTrial(plan, trialId, (trial) => done({ ...trial, name: name.trim() }))

/** The plan without a trial. */
export const removeTrial = (plan: Plan, trialId: string): Outcome<Plan> =>
  withTrial(plan, trialId, () => done(undefined))

/** The plan as the trial would have it: what stands is changed, and the trial is done with. */
export function makeItSo(plan: Plan, trialId: string): Outcome<Plan> {
  const trial = plan.trials?.find(({ id }) => id === trialId)
  if (!trial) return gone('trial')
  const kept = removeTrial(plan, trialId)
  return trial.changes.reduce<Outcome<Plan>>((sofar, { thingId, gone: away, ...figures }) => {
    if (!sofar.ok) return sofar
    return away ? removeThing(sofar.value, thingId) : setThing(sofar.value, thingId, figures)
  }, kept)
}

/** What a trial does, part by part. */
export const partsOf = ({ changes }: Trial): TrialPart[] =>
  changes.flatMap((change) =>
    ways
      .filter(({ way }) => change[way] !== undefined)
      .map(({ way }) => ({ thingId: change.thingId, way, value: figureOf(change, way) })),
  )

function figureOf(change: TrialChange, way: TrialWay): number | undefined {
  const value = change[way]
  return typeof value === 'number' ? value : undefined
}

const thingOf = ({ survey }: Plan, id: string) => survey.obstacles.find((each) => each.id === id)
const done = (trial: Trial | undefined): Outcome<Trial | undefined> => ({ ok: true, value: trial })

function withTrial(
  plan: Plan,
  trialId: string,
  to: (trial: Trial) => Outcome<Trial | undefined>,
): Outcome<Plan> {
  const trials = plan.trials ?? []
  const at = trials.findIndex(({ id }) => id === trialId)
  const before = trials[at]
  if (!before) return gone('trial')
  const after = to(before)
  if (!after.ok) return after
  return {
    ok: true,
    value: { ...plan, trials: after.value ? changedAt(trials, at, after.value) : without(trials, at) },
  }
}

/** What is taken away has no other change, and what is changed is not taken away. */
function changeWith(before: TrialChange, { thingId, way, value }: TrialPart): TrialChange {
  if (way === 'gone') return { thingId, gone: true }
  const { thingId: id, ...others } = before
  const kept = Object.entries(others).filter(([key]) => key !== 'gone')
  return { thingId: id, ...Object.fromEntries(kept), [way]: value }
}

function partFault(thing: Obstacle, { way, value }: TrialPart): Outcome<never> | undefined {
  if (!waysFor(thing).includes(way))
    return refused(thing.name, 'That cannot be done to it.', 'Try something else on it.')
  if (way === 'gone') return undefined
  if (value === undefined) return refused(thing.name, 'No figure is given.', 'Say how it would become.')
  if (thing[way] === value) return refused(thing.name, 'It is so already.', 'Give another figure.')
  return undefined
}

function nameFor(trials: readonly Trial[], thing: Obstacle, { way }: TrialPart): string {
  const words = ways.find((each) => each.way === way)?.done ?? ''
  const stem = `${thing.name.slice(0, LONGEST_NAME - words.length - 5)} ${words}`
  const taken = new Set(trials.map(({ name }) => name))
  for (let number = 1; ; number++) {
    const name = number === 1 ? stem : `${stem}, ${number}`
    if (!taken.has(name)) return name
  }
}
