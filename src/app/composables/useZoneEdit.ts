import type { Ring } from '#core/geometry'
import type { Findings } from '#plan'
import { editZones, withDrawnZones, type ZoneEdit } from '../edits/zones'
import { usePlanStore } from '../stores/plan'
import { usePlanEdit } from './usePlanEdit'

/** Edits of zones; suggested ones are taken over into the plan by the first edit. */
export function useZoneEdit(findings: () => Findings) {
  const store = usePlanStore()
  const { problems, settle, edit } = usePlanEdit()

  function change(what: string, zoneEdit: ZoneEdit): boolean {
    return store.plan !== undefined && settle(what, editZones(store.plan, findings().zoning, zoneEdit))
  }

  /** Draws a zone with a name and an id of its own. */
  function draw(ring: Ring): boolean {
    const zones = store.plan?.zones ?? []
    const suggested = findings().zoning.zones
    const taken = new Set([...zones, ...suggested].flatMap(({ id, name }) => [id, name]))
    const number = firstFree((at) => !taken.has(`drawn-${at}`) && !taken.has(`Drawn ${at}`))
    const zone = { id: `drawn-${number}`, name: `Drawn ${number}`, ring: [...ring] }
    return change(`draw zone “${zone.name}”`, { kind: 'draw', zone })
  }

  /** Keeps the suggested zones as drawn ones. */
  function takeOver(): boolean {
    return (
      store.plan !== undefined &&
      settle('keep the suggested zones', withDrawnZones(store.plan, findings().zoning))
    )
  }

  /** Back to suggested zones; choices and scores of one's own go with the drawn ones. */
  function suggest(): boolean {
    return edit('go back to suggested zones', (plan) => ({ ...plan, zones: [], choices: [], overrides: [] }))
  }

  return { problems, change, draw, takeOver, suggest }
}

function firstFree(free: (at: number) => boolean): number {
  for (let at = 1; ; at++) if (free(at)) return at
}
