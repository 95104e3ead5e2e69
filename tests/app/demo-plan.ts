import { demos } from '#io'
import { openPlan, type Plan } from '#plan'

/** An invented plan, fresh each time. */
export function demoPlan(id = 'bank-below-the-house'): Plan {
  const demo = demos.find((each) => each.id === id)
  const opened = demo && openPlan(demo.text)
  if (!opened?.ok) throw new Error(`no demo ${id}`)
  return opened.value
}
