import { computed, ref, shallowRef, watch } from 'vue'
import type { PlanPoint } from '#core/geometry'
import type { Findings } from '#plan'
import { useSheetStore } from '../stores/sheet'

type Mode = 'look' | 'shape' | 'split' | 'draw' | 'join'
const LEAST_CORNERS = 3

/** What is being done to zones on the plan, and the places set so far. */
export function useZoneMode(findings: () => Findings) {
  const sheet = useSheetStore()
  const mode = ref<Mode>('look')
  const places = shallowRef<readonly PlanPoint[]>([])
  const picked = computed(() => findings().zoning.zones.find(({ id }) => id === sheet.zoneId))
  const drawing = computed(() =>
    mode.value === 'split' || mode.value === 'draw'
      ? { places: places.value, closed: mode.value === 'draw' }
      : undefined,
  )
  const hint = computed(
    () =>
      ({
        look: picked.value ? '' : 'Pick a zone to change it.',
        shape: 'Drag a corner, or move it with the arrow keys; drag a half-way mark to make a new one.',
        split: 'Set two points on a line right across the zone.',
        draw: 'Set the corners one after another, then finish.',
        join: `Pick the zone to join to ${picked.value?.letter ?? 'it'}.`,
      })[mode.value],
  )
  const mayFinish = computed(() => places.value.length >= LEAST_CORNERS)

  function begin(next: Mode): void {
    mode.value = mode.value === next ? 'look' : next
    places.value = []
  }
  watch(
    () => sheet.zoneId,
    () => mode.value === 'shape' || begin('look'),
  )

  /** Back to looking; false when nothing was being done. */
  function leave(): boolean {
    if (mode.value === 'look') return false
    begin('look')
    return true
  }

  return { mode, places, picked, drawing, hint, mayFinish, begin, leave }
}
