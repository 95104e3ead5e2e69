import { shallowRef } from 'vue'
import type { Outcome, Problem } from '#core/units'
import { openPlan, type Plan } from '#plan'
import { usePlanStore } from '../stores/plan'

/**
 * Changes the plan on the sheet. Every change is checked as a saved plan would be; one that cannot stand is
 * refused with its problems, and the plan stays as it was.
 */
export function usePlanEdit() {
  const store = usePlanStore()
  const problems = shallowRef<readonly Problem[]>([])

  /** Makes a change; `what` is what the undo button will say. */
  function edit(what: string, change: (plan: Plan) => unknown): boolean {
    if (!store.plan) return false
    const checked = openPlan(JSON.stringify(change(store.plan)))
    return settle(what, checked)
  }

  /** The same for a change that may already have been refused. */
  function settle(what: string, outcome: Outcome<Plan>): boolean {
    problems.value = outcome.ok ? [] : outcome.problems
    if (outcome.ok) store.replace(what, outcome.value)
    return outcome.ok
  }

  return { problems, edit, settle }
}
