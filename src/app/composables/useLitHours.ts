import { onScopeDispose, ref, shallowRef, watch } from 'vue'
import type { LitAreas } from './momentLight'
import type { ShownLight } from './useMomentLight'
import type { SunMoment } from './useSunMoment'

/** One hour of the day and the ground that is lit then. */
export interface LitHour {
  readonly hour: number
  readonly areas: LitAreas
}

/** The whole hours of the day with the ground that is in the sun, worked out one by one while they are looked at. */
export function useLitHours(shown: ShownLight, moment: SunMoment) {
  const open = ref(false)
  const rows = shallowRef<readonly LitHour[]>([])
  let newest = 0

  watch([open, shown.ground, moment.spanH, moment.month], () => void fill(), { immediate: true })
  onScopeDispose(() => newest++)

  async function fill(): Promise<void> {
    const mine = ++newest
    rows.value = []
    if (!open.value) return
    const areasAt = shown.areasOf()
    for (const hour of wholeHours(moment.spanH.value)) {
      const areas = areasAt(moment.at(hour).sun, moment.month.value)
      rows.value = [...rows.value, { hour, areas }]
      // The page stays alive between two hours of a large site.
      await new Promise((resolve) => setTimeout(resolve))
      if (mine !== newest) return
    }
  }

  return { open, rows }
}

function wholeHours(span: { readonly fromH: number; readonly toH: number } | undefined): number[] {
  if (!span) return []
  const first = Math.ceil(span.fromH)
  return Array.from({ length: Math.max(0, Math.floor(span.toH) - first + 1) }, (_, step) => first + step)
}
