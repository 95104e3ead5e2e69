import { ref, watch } from 'vue'

/** Jobs that are ticked off this year on this device, by plan; they are no part of the plan. */
export function useTicks(planName: () => string, year: number) {
  const key = () => `lynchet-ticks/${year}/${planName()}`
  const done = ref(read(key()))
  watch(planName, () => (done.value = read(key())))

  function tick(jobId: string): void {
    done.value = done.value.includes(jobId) ? done.value.filter((id) => id !== jobId) : [...done.value, jobId]
    try {
      localStorage.setItem(key(), JSON.stringify(done.value))
    } catch {
      // A browser that keeps nothing still shows the tick until the page is left.
    }
  }

  return { done, tick }
}

function read(key: string): readonly string[] {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(key) ?? '[]')
    return Array.isArray(kept) ? kept.filter((id) => typeof id === 'string') : []
  } catch {
    return []
  }
}
