import type { CoverKind } from '#core/cover'
import type { ScoreName } from '#core/scores'
import type { Outcome } from '#core/units'
import type { Findings, Plan } from '#plan'
import { withChoice, withDrawnZones, withOverride } from '../edits/zones'
import { usePlanStore } from '../stores/plan'
import { usePlanEdit } from './usePlanEdit'

/** What the person decides for a zone: its cover, its plants, its scores. Zones become drawn by the first decision. */
export function useZoneChoice(findings: () => Findings) {
  const store = usePlanStore()
  const { problems, settle } = usePlanEdit()

  const letterOf = (zoneId: string) => findings().zoning.zones.find(({ id }) => id === zoneId)?.letter ?? ''

  function decide(what: string, change: (plan: Plan) => Plan): boolean {
    if (!store.plan) return false
    const drawn: Outcome<Plan> = withDrawnZones(store.plan, findings().zoning)
    return settle(what, drawn.ok ? { ok: true, value: change(drawn.value) } : drawn)
  }

  /** Sets a zone to a cover, or back to what is suggested. */
  function cover(zoneId: string, kind: CoverKind | undefined, words: string): boolean {
    return decide(`${letterOf(zoneId)}: ${words}`, (plan) => withChoice(plan, zoneId, { cover: kind }))
  }

  /** Puts a plant on the list of wanted or unwanted plants, or takes it off. */
  function plant(
    zoneId: string,
    { id: plantId, name }: { readonly id: string; readonly name: string },
    wish: 'insist' | 'without' | 'neither',
  ): boolean {
    const words = { insist: 'insist on', without: 'do without', neither: 'leave open' }[wish]
    return decide(`${letterOf(zoneId)}: ${words} ${name}`, (plan) => {
      const before = plan.choices.find((choice) => choice.zoneId === zoneId)
      const others = (ids: readonly string[] | undefined) => (ids ?? []).filter((id) => id !== plantId)
      const added = wish === 'neither' ? [] : [plantId]
      return withChoice(plan, zoneId, {
        plants: [...others(before?.plants), ...(wish === 'insist' ? added : [])],
        without: [...others(before?.without), ...(wish === 'without' ? added : [])],
      })
    })
  }

  /** A score of the person's own, with the reason; or ours again. */
  function score(
    zoneId: string,
    name: ScoreName,
    own: { readonly value: number; readonly reason: string } | undefined,
  ): boolean {
    const what = own
      ? `set ${name} of ${letterOf(zoneId)} to ${own.value}`
      : `take our ${name} of ${letterOf(zoneId)}`
    return decide(what, (plan) => withOverride(plan, { zoneId, score: name }, own))
  }

  return { problems, cover, plant, score }
}
