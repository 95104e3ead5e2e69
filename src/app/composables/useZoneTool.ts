import { computed, ref } from 'vue'
import { pointInRing, type PlanPoint } from '#core/geometry'
import type { Findings, Plan } from '#plan'
import { useSheetStore } from '../stores/sheet'
import type { MapTool } from './mapTool.types'
import { useZoneEdit } from './useZoneEdit'
import { useZoneMode } from './useZoneMode'

/** Zones on the plan: picked, drawn, split, joined and reshaped. */
export function useZoneTool(plan: () => Plan, findings: () => Findings) {
  const sheet = useSheetStore()
  const { problems, change, draw } = useZoneEdit(findings)
  const { mode, places, picked, drawing, hint, mayFinish, begin, leave } = useZoneMode(findings)
  const refusals = ref(0)

  function press(at: PlanPoint): boolean {
    if (drawing.value) {
      put(at)
      return true
    }
    const zone = findings().zoning.zones.find(({ ring }) => pointInRing(at, ring))
    if (zone) pickZone(zone.id)
    return zone !== undefined && mode.value !== 'look'
  }

  function put(at: PlanPoint): void {
    places.value = [...places.value, at]
    const [from, to] = places.value
    if (mode.value !== 'split' || !picked.value || !from || !to) return
    change(`split ${picked.value.letter}`, { kind: 'split', id: picked.value.id, line: [from, to] })
    begin('look')
  }

  function pickZone(zoneId: string): void {
    const [first, other] = [picked.value, findings().zoning.zones.find(({ id }) => id === zoneId)]
    if (drawing.value || !other) return
    if (mode.value !== 'join' || !first || other === first) sheet.zoneId = zoneId
    else {
      change(`join ${first.letter} and ${other.letter}`, { kind: 'merge', ids: [first.id, zoneId] })
      begin('look')
    }
  }

  function remove(): void {
    if (!picked.value) return
    const { id, letter } = picked.value
    if (change(`take out ${letter}`, { kind: 'remove', id })) sheet.zoneId = undefined
  }

  const tool: MapTool = {
    ...zoneShape(plan, picked, { mode, refusals }),
    drawing,
    hint,
    press,
    pickZone,
    reshape: (ring) => {
      const { id, letter } = picked.value ?? { id: '', letter: '' }
      if (!change(`reshape ${letter}`, { kind: 'reshape', id, ring })) refusals.value++
    },
    leave,
  }
  const finish = () => draw(places.value) && begin('look')
  return { tool, problems, mode, picked, begin, finish, mayFinish, remove }
}

type ZoneMode = ReturnType<typeof useZoneMode>

/** The outline as drawn while it is reshaped; a refused change draws it anew where it was. */
function zoneShape(
  plan: () => Plan,
  picked: ZoneMode['picked'],
  { mode, refusals }: { mode: ZoneMode['mode']; refusals: { readonly value: number } },
): Pick<MapTool, 'shape' | 'corner'> {
  const shape = computed(() => {
    const zone = picked.value
    if (mode.value !== 'shape' || !zone || refusals.value < 0) return undefined
    const ring = plan().zones.find(({ id }) => id === zone.id)?.ring ?? zone.ring
    return { name: zone.letter, ring, closed: true, grows: true, whole: true }
  })
  return { shape, corner: ref(0) }
}
