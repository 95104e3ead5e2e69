import { computed } from 'vue'
import type { PlanPoint } from '#core/geometry'
import type { Outcome } from '#core/units'
import type { Plan } from '#plan'
import type { Subject } from '../edits/subject.types'
import { useSheetStore } from '../stores/sheet'
import type { PlacedWork, usePlacedPick } from './usePlacedPick'

type Apply = (what: string, change: (plan: Plan) => Outcome<Plan>) => boolean

/** Moves, reshapes and takes out what is picked, and changes its figures. */
export function usePlacedChange(
  { subject, plan, findings }: PlacedWork,
  { picked, corner }: ReturnType<typeof usePlacedPick>,
  apply: Apply,
) {
  const sheet = useSheetStore()
  const figures = computed(() =>
    picked.value ? (subject()?.figures(plan(), picked.value.id, corner.value) ?? []) : [],
  )

  function change(verb: string, edit: (of: Subject, now: Plan, id: string) => Outcome<Plan>): boolean {
    const [of, placed] = [subject(), picked.value]
    if (!of || !placed) return false
    return apply(`${verb} ${placed.name}`, (now) => edit(of, now, placed.id))
  }

  function reshape(ring: readonly PlanPoint[]): void {
    const verb = picked.value?.least === undefined ? 'move' : 'reshape'
    change(verb, (of, now, id) => of.reshape(now, id, ring, findings()))
  }

  const ringNow = () => picked.value?.ring ?? []
  const setPlace = (place: PlanPoint) =>
    reshape(ringNow().map((each, at) => (at === corner.value ? place : each)))
  const takeOutCorner = () => reshape(ringNow().filter((_, at) => at !== corner.value))
  const setFigure = (key: string, value: number | undefined) =>
    change('change', (of, now, id) => of.setFigure(now, { id, corner: corner.value, key, value }))

  function takeOut(): void {
    if (change('take out', (of, now, id) => of.takeOut(now, id))) sheet.placed = undefined
  }

  return { figures, reshape, setPlace, takeOutCorner, setFigure, takeOut }
}
