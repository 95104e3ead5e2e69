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
    return settle(what, checked.ok ? { ok: true, value: samePicture(store.plan, checked.value) } : checked)
  }

  /** The same for a change that may be refused before it is checked. */
  function apply(what: string, change: (plan: Plan) => Outcome<Plan>): boolean {
    if (!store.plan) return false
    const changed = change(store.plan)
    return changed.ok ? edit(what, () => changed.value) : settle(what, changed)
  }

  /** The same for a change that may already have been refused. */
  function settle(what: string, outcome: Outcome<Plan>): boolean {
    problems.value = outcome.ok ? [] : outcome.problems
    if (outcome.ok) store.replace(what, outcome.value)
    return outcome.ok
  }

  return { problems, edit, apply, settle }
}

/** The steps of undo share one copy of a picture, which may be megabytes long. */
function samePicture(before: Plan, after: Plan): Plan {
  const [old, now] = [before.survey.backdrop, after.survey.backdrop]
  if (!old || !now || old.dataUrl !== now.dataUrl) return after
  return { ...after, survey: { ...after.survey, backdrop: { ...now, dataUrl: old.dataUrl } } }
}
