import { computed } from 'vue'
import type { Findings } from '#plan'
import { useSunMomentStore } from '../stores/sun-moment'
import { usePickedSun } from './usePickedSun'

/** The place whose sky is looked at: the one that was touched, else the middle of the zone that is drawn. */
export function useLookedPlace(findings: () => Findings) {
  const store = useSunMomentStore()
  const { zone, zoneSun } = usePickedSun(findings)
  const place = computed(() => store.place ?? zoneSun.value?.middle)
  const name = computed(() => {
    if (store.place) return `the place ${store.place.eastM} m east, ${store.place.northM} m north`
    return zone.value ? `the middle of ${zone.value.letter}, ${zone.value.name}` : ''
  })
  return { place, name, zone }
}
