import { trueBearing } from '#core/booking'
import { declinationAt } from '#io'
import type { Plan } from '#plan'
import { computed, ref } from 'vue'
import { today } from './useStartBook'

/**
 * Turns compass bearings into true ones, where they were read by compass.
 *
 * @param site - where they were read
 * @returns whether it was by compass and on which day, what that comes to in words, what is wrong, and the turn itself
 */
export function useCompassCorrection(site: () => Plan['site']) {
  const byCompass = ref(false)
  const on = ref(today())

  const found = computed(() => {
    const { latitudeDeg, longitudeDeg, elevationM } = site()
    return byCompass.value ? declinationAt(latitudeDeg, longitudeDeg, elevationM, on.value) : undefined
  })
  const problems = computed(() => (found.value?.ok === false ? found.value.problems : []))
  const words = computed(() => {
    if (!found.value?.ok) return ''
    const { declinationDeg, model } = found.value.value
    const size = Math.abs(declinationDeg).toFixed(1)
    return size === '0.0'
      ? `The compass reads true here on that day (${model}).`
      : `${size}° is ${declinationDeg > 0 ? 'added to' : 'taken off'} what is read here on that day (${model}).`
  })

  /** The bearing from true north; undefined where the compass cannot be corrected. */
  function toTrue(readDeg: number): number | undefined {
    if (!found.value) return readDeg
    return found.value.ok ? trueBearing(readDeg, found.value.value.declinationDeg) : undefined
  }

  return { byCompass, on, problems, words, toTrue }
}
