import type { Obstacle } from './plan-survey.schema'
import type { Trial } from './plan.schema'

/**
 * The things of a plan as a trial would have them.
 *
 * @param things - what stands and lies on and near the plot
 * @param changes - what the trial changes; every thing it names is there
 * @returns the things changed, in the same order, without those taken away
 * @throws RangeError when a change names a thing that is not there, which opening the plan refuses
 */
export function trialThings(things: readonly Obstacle[], changes: Trial['changes']): Obstacle[] {
  const lost = changes.find(({ thingId }) => !things.some(({ id }) => id === thingId))
  if (lost) throw new RangeError(`trialThings: there is no thing “${lost.thingId}”`)
  return things.flatMap((thing) => {
    const own = changes.filter(({ thingId }) => thingId === thing.id)
    if (own.some(({ gone }) => gone)) return []
    return [own.reduce(withFigures, thing)]
  })
}

function withFigures(thing: Obstacle, change: Trial['changes'][number]): Obstacle {
  const { heightM, ridgeM, crownBaseM, crownWidthM, leafyLight, bareLight } = { ...thing, ...change }
  return { ...thing, heightM, ridgeM, crownBaseM, crownWidthM, leafyLight, bareLight }
}
