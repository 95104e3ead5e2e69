import { computed, ref, shallowRef } from 'vue'
import type { PlanPoint } from '#core/geometry'
import { catchmentOf, dropPath } from '#core/terrain'
import { planShade, planShadings, type PlanShade } from '#report'
import type { Findings, Plan } from '#plan'
import { shadePicture } from './shadePicture'

/** What is read off the plan without changing it: a shading, and where a drop of water goes. */
export function usePlanReading(plan: () => Plan, findings: () => Findings) {
  const shadingId = ref('')
  const following = ref(false)
  const fell = shallowRef<PlanPoint>()

  const shade = computed<PlanShade | undefined>(() =>
    shadingId.value === '' ? undefined : planShade(plan(), findings(), shadingId.value),
  )
  const picture = computed(() => shade.value && shadePicture(shade.value, findings().surface.frame))
  const drop = computed(() => {
    const { surface, terrain } = findings()
    return fell.value && following.value ? dropPath(surface, terrain, fell.value) : undefined
  })
  const drains = computed(() => {
    const { surface, terrain } = findings()
    return fell.value && following.value ? catchmentOf(surface, terrain, fell.value) : undefined
  })

  /** Takes a touch of the plan while a drop is being followed. */
  function press(at: PlanPoint): boolean {
    if (following.value) fell.value = at
    return following.value
  }

  /** Writes where the drop falls, one figure at a time; the other stays, or is 0 to begin with. */
  function write(axis: 'eastM' | 'northM', valueM: number): void {
    const { eastM, northM } = fell.value ?? { eastM: 0, northM: 0 }
    fell.value = { eastM, northM, [axis]: valueM }
  }

  return {
    shadeBy: (id: string) => (shadingId.value = id),
    follow: (on: boolean) => (following.value = on),
    write,
    shadingId,
    shadings: computed(() => planShadings(findings())),
    shade,
    picture,
    following,
    fell,
    drop,
    drains,
    press,
  }
}
