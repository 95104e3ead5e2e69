import type { Obstacle, Plan } from '#plan'
import { fieldsOf } from './thing-fields'

type Trials = Plan['trials']
export type Trial = NonNullable<Trials>[number]
export type TrialChange = Trial['changes'][number]

/** The trials without what they change on a thing that is gone; a trial of nothing goes too. */
export const trialsWithout = (trials: Trials, thingId: string): Trials =>
  changed(trials, (change) => (change.thingId === thingId ? undefined : change))

/** The trials without changes that no longer fit what a thing has become. */
export function trialsFitting(trials: Trials, thing: Obstacle): Trials {
  const fields: ReadonlySet<string> = new Set(['thingId', 'gone', ...fieldsOf(thing)])
  return changed(trials, (change) => {
    if (change.thingId !== thing.id) return change
    const kept = Object.entries(change).filter(([key]) => fields.has(key))
    return kept.length > 1 ? (Object.fromEntries(kept) as TrialChange) : undefined
  })
}

function changed(trials: Trials, to: (change: TrialChange) => TrialChange | undefined): Trials {
  return trials
    ?.map((trial) => ({ ...trial, changes: trial.changes.flatMap((change) => to(change) ?? []) }))
    .filter(({ changes }) => changes.length > 0)
}
