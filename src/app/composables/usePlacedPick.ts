import { computed, ref, watch } from 'vue'
import type { PlanPoint } from '#core/geometry'
import type { Findings, Plan } from '#plan'
import type { Placed, Subject } from '../edits/subject.types'
import { useSheetStore } from '../stores/sheet'

/** What is worked on on the plan, and on which plan. */
export interface PlacedWork {
  readonly subject: () => Subject | undefined
  readonly plan: () => Plan
  readonly findings: () => Findings
}

/** Which level, line or thing is picked, and which of its corners. */
export function usePlacedPick({ subject, plan, findings }: PlacedWork) {
  const sheet = useSheetStore()
  const corner = ref(0)
  const all = computed(() => subject()?.all(plan(), findings()) ?? [])
  const picked = computed(() =>
    sheet.placed && sheet.placed.subject === subject()?.id
      ? all.value.find(({ id }) => id === sheet.placed?.id)
      : undefined,
  )
  watch(
    () => picked.value?.ring.length,
    (count) => {
      if (count !== undefined && corner.value >= count) corner.value = 0
    },
  )

  function pick(placed: Placed | undefined, at?: PlanPoint): void {
    const of = subject()
    sheet.placed = of && placed && { subject: of.id, id: placed.id }
    corner.value = placed && at ? nearestCorner(placed.ring, at) : 0
  }

  /** Picks the next or the one before, round and round. */
  function step(by: 1 | -1): void {
    const count = all.value.length
    if (count === 0) return
    const at = all.value.findIndex(({ id }) => id === picked.value?.id)
    pick(all.value[at === -1 ? (by === 1 ? 0 : count - 1) : (at + by + count) % count])
  }

  function stepCorner(by: 1 | -1): void {
    const count = picked.value?.ring.length ?? 1
    corner.value = (corner.value + by + count) % count
  }

  return { all, picked, corner, pick, step, stepCorner }
}

function nearestCorner(ring: readonly PlanPoint[], at: PlanPoint): number {
  const away = ring.map(({ eastM, northM }) => Math.hypot(eastM - at.eastM, northM - at.northM))
  return Math.max(0, away.indexOf(Math.min(...away)))
}
