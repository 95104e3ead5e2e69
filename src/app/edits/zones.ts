import {
  addZone,
  mergeZones,
  removeZone,
  renameZone,
  reshapeZone,
  splitZone,
  zonesFromSuggestion,
  type Zone,
  type Zoning,
} from '#core/zones'
import type { PlanPoint, Ring } from '#core/geometry'
import type { Outcome } from '#core/units'
import type { Choice, Plan } from '#plan'

/** What may be done to zones. */
export type ZoneEdit =
  | { readonly kind: 'rename'; readonly id: string; readonly name: string }
  | { readonly kind: 'reshape'; readonly id: string; readonly ring: Ring }
  | { readonly kind: 'split'; readonly id: string; readonly line: readonly [PlanPoint, PlanPoint] }
  | { readonly kind: 'merge'; readonly ids: readonly string[] }
  | { readonly kind: 'remove'; readonly id: string }
  | { readonly kind: 'draw'; readonly zone: Zone }

/**
 * A plan whose zones are drawn: suggested zones are taken over, so that choices refer to zones that are there.
 *
 * @param plan - the plan
 * @param zoning - the zones on show
 * @returns the same plan when its zones are drawn already
 */
export function withDrawnZones(plan: Plan, zoning: Zoning): Outcome<Plan> {
  if (plan.zones.length > 0) return { ok: true, value: plan }
  const drawn = zonesFromSuggestion(zoning)
  return drawn.ok ? { ok: true, value: { ...plan, zones: drawn.value } } : drawn
}

/**
 * The plan after an edit of its zones; choices and overrides of zones that are gone go with them.
 *
 * @param plan - the plan
 * @param zoning - the zones on show
 * @param edit - what is done
 * @returns the plan, or what is wrong
 */
export function editZones(plan: Plan, zoning: Zoning, edit: ZoneEdit): Outcome<Plan> {
  const drawn = withDrawnZones(plan, zoning)
  if (!drawn.ok) return drawn
  const edited = apply(drawn.value.zones, edit)
  return edited.ok ? { ok: true, value: pruned({ ...drawn.value, zones: edited.value }) } : edited
}

function apply(zones: readonly Zone[], edit: ZoneEdit): Outcome<Zone[]> {
  switch (edit.kind) {
    case 'rename':
      return renameZone(zones, edit.id, edit.name)
    case 'reshape':
      return reshapeZone(zones, edit.id, edit.ring)
    case 'split':
      return splitZone(zones, edit.id, edit.line)
    case 'merge':
      return mergeZones(zones, edit.ids)
    case 'remove':
      return removeZone(zones, edit.id)
    case 'draw':
      return addZone(zones, edit.zone)
  }
}

/** Without choices and overrides of zones that are not drawn. */
function pruned(plan: Plan): Plan {
  const ids = new Set(plan.zones.map(({ id }) => id))
  const known = ({ zoneId }: { readonly zoneId: string }) => plan.zones.length === 0 || ids.has(zoneId)
  return { ...plan, choices: plan.choices.filter(known), overrides: plan.overrides.filter(known) }
}

/** The plan with a zone’s choice changed; an empty choice is taken out. */
export function withChoice(plan: Plan, zoneId: string, change: Partial<Omit<Choice, 'zoneId'>>): Plan {
  const before = plan.choices.find((choice) => choice.zoneId === zoneId)
  const after = emptied({ ...before, ...change, zoneId })
  const others = plan.choices.filter((choice) => choice.zoneId !== zoneId)
  return { ...plan, choices: after ? [...others, after] : others }
}

function emptied({ zoneId, cover, plants, without }: Choice): Choice | undefined {
  const kept: Choice = {
    zoneId,
    ...(cover && { cover }),
    ...(plants?.length && { plants }),
    ...(without?.length && { without }),
  }
  return Object.keys(kept).length > 1 ? kept : undefined
}

/** The plan with a person’s own score, or without it when there is none. */
export function withOverride(
  plan: Plan,
  of: Pick<Plan['overrides'][number], 'zoneId' | 'score'>,
  own: { readonly value: number; readonly reason: string } | undefined,
): Plan {
  const others = plan.overrides.filter((row) => row.zoneId !== of.zoneId || row.score !== of.score)
  return { ...plan, overrides: own ? [...others, { ...of, ...own }] : others }
}
