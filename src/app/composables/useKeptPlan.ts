import { ref, watch, type Ref } from 'vue'
import { openPlan, savePlan, type Plan } from '#plan'
import type { Keep } from './browserKeep'
import { reason, turns } from './turns'
import { useSetAside } from './useSetAside'

/**
 * Keeps every version of the plan on this device as soon as it is made, so that nothing is lost in a crash; a plan
 * that makes way for another is set aside first.
 *
 * @param plan - the plan on the sheet
 * @param keep - where to keep it
 * @returns when it was last kept, what went wrong, the plans set aside, and how to get them back
 */
export function useKeptPlan(plan: Readonly<Ref<Plan | undefined>>, keep: Keep) {
  const keptAt = ref<Date>()
  const trouble = ref('')
  const inTurn = turns((words) => (trouble.value = words))

  watch(plan, (now) => {
    if (!now) return
    const text = savePlan(now)
    void inTurn(async () => {
      await keep.write(text)
      keptAt.value = new Date()
      trouble.value = ''
    }, 'Not kept on this device')
  })

  /** The plan of last time, if it is there and whole. */
  async function last(): Promise<Plan | undefined> {
    try {
      const text = await keep.read()
      if (text === undefined) return undefined
      const opened = openPlan(text)
      if (opened.ok) return opened.value
      trouble.value = `The plan kept last time cannot be read: ${opened.problems[0]?.what ?? ''}`
    } catch (error) {
      trouble.value = `This browser keeps nothing for us (${reason(error)}). Save a copy before you leave.`
    }
    return undefined
  }

  return { keptAt, trouble, last, ...useSetAside(keep, inTurn) }
}
