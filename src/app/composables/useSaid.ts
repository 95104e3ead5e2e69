import { onScopeDispose, ref, watch } from 'vue'

/** Words come to rest when they have not changed for so long [ms]. */
const REST_MS = 700

/** Words to be said aloud: only those that last, and none while something moves. */
export function useSaid(words: () => string, moving: () => boolean) {
  const said = ref('')
  let waiting: ReturnType<typeof setTimeout> | undefined
  watch([words, moving], ([now, moves]) => {
    clearTimeout(waiting)
    if (!moves) waiting = setTimeout(() => (said.value = now), REST_MS)
  })
  onScopeDispose(() => clearTimeout(waiting))
  return said
}
