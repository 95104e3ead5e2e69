import { computed } from 'vue'
import type { Findings } from '#plan'
import { useSheetStore } from '../stores/sheet'

/** The zone whose sun is drawn: the picked one, or the first. */
export function usePickedSun(findings: () => Findings) {
  const sheet = useSheetStore()
  const at = computed(() => {
    const picked = findings().zoning.zones.findIndex(({ id }) => id === sheet.zoneId)
    return Math.max(0, picked)
  })
  return {
    zone: computed(() => findings().zoning.zones[at.value]),
    zoneSun: computed(() => findings().zoneSun[at.value]),
  }
}
