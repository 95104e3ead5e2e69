import { onMounted, shallowRef } from 'vue'
import { openPlan } from '#plan'
import type { Keep, SetAside } from './browserKeep'

/** Most plans that are kept after they made way for others. */
const MOST_ASIDE = 12

type InTurn = (work: () => Promise<void>, otherwise: string) => Promise<void>

/** Plans that made way for others: set aside before, listed on the start, forgotten only when asked. */
export function useSetAside(keep: Keep, inTurn: InTurn) {
  const aside = shallowRef<readonly SetAside[]>([])

  /** Puts what is kept aside before another plan takes its place; `plain` are texts that anyone can open again. */
  function setAside(plain: readonly string[]): Promise<void> {
    return inTurn(async () => {
      const text = await keep.read()
      if (text === undefined || plain.includes(text)) return
      const opened = openPlan(text)
      const name = opened.ok ? opened.value.name : 'A plan that cannot be read'
      const others = (await keep.readAside()).filter((each) => each.text !== text)
      aside.value = [{ name, at: new Date().toISOString(), text }, ...others].slice(0, MOST_ASIDE)
      await keep.writeAside(aside.value)
    }, 'The plan before could not be set aside')
  }

  /** Takes a plan off the list for good. */
  function forget(at: string): Promise<void> {
    return inTurn(async () => {
      aside.value = aside.value.filter((each) => each.at !== at)
      await keep.writeAside(aside.value)
    }, 'The list could not be changed')
  }

  onMounted(
    () =>
      void inTurn(async () => {
        aside.value = await keep.readAside()
      }, 'The list of plans cannot be read'),
  )

  return { aside, setAside, forget }
}
