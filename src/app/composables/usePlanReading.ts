import { computed, ref, shallowRef } from 'vue'
import type { PlanPoint } from '#core/geometry'
import { catchmentOf, dropPath } from '#core/terrain'
import { months } from '#core/units'
import { planShade, planShadings, type PlanShade } from '#report'
import type { Findings, Plan } from '#plan'
import { useSheetStore } from '../stores/sheet'
import { shadePicture } from './shadePicture'

/** One choice for the sun of all twelve months: the month is picked beside it. */
const MONTH_ID = 'sun-month'
const monthId = (month: number): string => `sun-${String(month + 1).padStart(2, '0')}`

const groupNames = { ground: 'the ground', sun: 'the sun', trials: 'a trial', views: 'what is seen' } as const

/** Shadings in their groups, the months as one. */
function shadingGroups(findings: Findings) {
  const twelve = new Set(months.map(monthId))
  const single = planShadings(findings).filter(({ id }) => !twelve.has(id))
  const choices = [
    ...single,
    { id: MONTH_ID, name: 'direct sun on a clear day of a month', group: 'sun' as const },
  ]
  return Object.entries(groupNames)
    .map(([group, name]) => ({ name, choices: choices.filter((choice) => choice.group === group) }))
    .filter(({ choices: own }) => own.length > 0)
}

/** What is read off the plan without changing it: a shading, and where a drop of water goes. */
export function usePlanReading(plan: () => Plan, findings: () => Findings) {
  const sheet = useSheetStore()
  const shadingId = ref('')
  const following = ref(false)
  const fell = shallowRef<PlanPoint>()

  const shade = computed<PlanShade | undefined>(() =>
    shadingId.value === ''
      ? undefined
      : planShade(plan(), findings(), shadingId.value === MONTH_ID ? monthId(sheet.month) : shadingId.value),
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
    shadings: computed(() => shadingGroups(findings())),
    byMonth: computed(() => shadingId.value === MONTH_ID),
    shade,
    picture,
    following,
    fell,
    drop,
    drains,
    press,
  }
}
