import type { Plan } from '#plan'
import { defineStore } from 'pinia'
import { computed, shallowRef } from 'vue'

/** Most steps that can be undone. */
const UNDO_STEPS = 200

interface Step {
  readonly plan: Plan
  /** What was done to get here, for the undo button: "Undo: split zone B". */
  readonly what: string
}

/** The plan on the sheet. It is replaced, never changed in place, so that undo is a list of plans. */
export const usePlanStore = defineStore('plan', () => {
  const past = shallowRef<readonly Step[]>([])
  const now = shallowRef<Step>()
  const future = shallowRef<readonly Step[]>([])

  /** Another plan altogether: nothing to undo. */
  function open(plan: Plan): void {
    past.value = []
    future.value = []
    now.value = { plan, what: 'opened' }
  }

  /** The next plan, and what was done in words. */
  function replace(what: string, plan: Plan): void {
    if (now.value) past.value = [...past.value, now.value].slice(-UNDO_STEPS)
    future.value = []
    now.value = { plan, what }
  }

  function undo(): void {
    const before = past.value.at(-1)
    if (!before || !now.value) return
    future.value = [now.value, ...future.value]
    past.value = past.value.slice(0, -1)
    now.value = before
  }

  function redo(): void {
    const [after, ...rest] = future.value
    if (!after || !now.value) return
    past.value = [...past.value, now.value]
    future.value = rest
    now.value = after
  }

  return {
    plan: computed(() => now.value?.plan),
    undoes: computed(() => (past.value.length > 0 ? now.value?.what : undefined)),
    redoes: computed(() => future.value[0]?.what),
    open,
    replace,
    undo,
    redo,
  }
})
