import { computed, ref, shallowRef, watch } from 'vue'
import type { PlanPoint } from '#core/geometry'
import type { Outcome } from '#core/units'
import type { Plan } from '#plan'
import { usePlanStore } from '../stores/plan'
import { useSheetStore } from '../stores/sheet'
import type { PlacedWork, usePlacedPick } from './usePlacedPick'

/** Least places of each, and the number at which it is finished by itself. */
const LEAST = { point: 1, pair: 2, line: 2, outline: 3 } as const
const FULL = { point: 1, pair: 2, line: Infinity, outline: Infinity } as const

type Apply = (what: string, change: (plan: Plan) => Outcome<Plan>) => boolean

/** Puts down levels, lines and things, place by place. */
export function usePlacedAdd(
  { subject, plan, findings }: PlacedWork,
  { all, pick }: ReturnType<typeof usePlacedPick>,
  apply: Apply,
) {
  const sheet = useSheetStore()
  const store = usePlanStore()
  const kindId = ref('')
  const places = shallowRef<readonly PlanPoint[]>([])
  const kinds = computed(() => subject()?.kinds(plan()) ?? [])
  const adding = computed(() => kinds.value.find(({ id }) => id === kindId.value))
  const mayFinish = computed(() => adding.value && places.value.length >= LEAST[adding.value.lies])
  watch(
    () => subject()?.id,
    () => begin(''),
  )

  /** Begins to put down a kind of thing; the same again leaves it. */
  function begin(kind: string): void {
    kindId.value = kindId.value === kind ? '' : kind
    places.value = []
    if (kindId.value) sheet.placed = undefined
  }

  /** Puts down the next place. */
  function put(at: PlanPoint): void {
    places.value = [...places.value, at]
    if (adding.value && places.value.length >= FULL[adding.value.lies]) finish()
  }

  /** Single points go on being added; the new one is picked, so that its figures can be typed. */
  function finish(): void {
    const [of, kind] = [subject(), adding.value]
    if (!of || !kind) return
    const before = new Set(all.value.map(({ id }) => id))
    const done = apply(`add ${kind.text}`, (now) => of.put(now, kind.id, places.value, findings()))
    places.value = []
    if (!done || !store.plan) return
    if (kind.lies !== 'point') kindId.value = ''
    pick(of.all(store.plan, findings()).find(({ id }) => !before.has(id)))
  }

  const takeBack = () => (places.value = places.value.slice(0, -1))
  return { kinds, adding, places, mayFinish, begin, put, finish, takeBack }
}
