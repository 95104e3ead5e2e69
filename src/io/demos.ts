import bank from '#data/demos/bank-below-the-house.lynchet'
import garden from '#data/demos/garden-falling-to-the-house.lynchet'
import banks from '#data/demos/three-banks-below-the-ground.lynchet'
import { openPlan } from '#plan'

/** An invented plan to look at, as a saved file. */
export interface Demo {
  /** Name of its file in data/demos, without the ending. */
  readonly id: string
  readonly title: string
  /** Contents of the plan file. */
  readonly text: string
}

/** The invented plans that come with the program. */
export const demos: readonly Demo[] = [
  demo('bank-below-the-house', bank),
  demo('garden-falling-to-the-house', garden),
  demo('three-banks-below-the-ground', banks),
]

function demo(id: string, table: unknown): Demo {
  const text = `${JSON.stringify(table, null, 2)}\n`
  const plan = openPlan(text)
  if (!plan.ok)
    throw new RangeError(`demo: ${id} must be a plan, got ${plan.problems.map(({ what }) => what).join(' ')}`)
  return { id, title: plan.value.name, text }
}
