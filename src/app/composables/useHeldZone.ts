import { computed } from 'vue'
import type { Findings } from '#plan'
import { useSheetStore } from '../stores/sheet'

/** The zone whose planting is on show: the picked one, or the first that is planted. */
export function useHeldZone(findings: () => Findings) {
  const sheet = useSheetStore()
  const id = computed(() => {
    const { zones, zoning } = findings()
    return (
      sheet.zoneId ?? zones.find(({ planting }) => planting.mix.length > 0)?.zoneId ?? zoning.zones[0]?.id
    )
  })
  const zone = computed(() => findings().zoning.zones.find((each) => each.id === id.value))
  const own = computed(() => findings().zones.find(({ zoneId }) => zoneId === id.value))
  return { zone, own }
}
