import { computed, ref } from 'vue'
import type { PlanPoint } from '#core/geometry'
import { MOST_HANDLES } from '../components/plan/map-handles'
import { pickPlaced, snapped } from '../edits/pick-placed'
import { snapPlaces } from '../edits/snap-places'
import { placedHint } from './placedHint'
import type { MapTool } from './mapTool.types'
import { usePlacedAdd } from './usePlacedAdd'
import { usePlacedChange } from './usePlacedChange'
import { usePlacedPick, type PlacedWork } from './usePlacedPick'
import { usePlanEdit } from './usePlanEdit'

/** Levels, lines, things and all else but zones, worked on on the plan. */
export function usePlacedTool(work: PlacedWork) {
  const { problems, apply } = usePlanEdit()
  const picking = usePlacedPick(work)
  const adds = usePlacedAdd(work, picking, apply)
  /** Goes up with every refused change, so that what was dragged goes back to where it was. */
  const refusals = ref(0)
  const changes = usePlacedChange(work, picking, (what, change) => {
    const done = apply(what, change)
    if (!done) refusals.value++
    return done
  })

  const snap = (at: PlanPoint, reachM: number) =>
    snapped(snapPlaces(work.plan(), work.findings().surface.boundary, picking.picked.value), at, reachM)

  function press(at: PlanPoint, reachM: number): boolean {
    if (adds.adding.value) {
      adds.put(snap(at, reachM))
      return true
    }
    const found = pickPlaced(picking.all.value, at, reachM)
    picking.pick(found, at)
    return found !== undefined
  }

  function leave(): boolean {
    if (!adds.adding.value) return false
    adds.begin('')
    return true
  }

  const tool: MapTool = {
    shape: computed(() => {
      const of = picking.picked.value
      if (!of || of.ring.length > MOST_HANDLES || refusals.value < 0) return undefined
      return { ...of, grows: of.least !== undefined, whole: of.least !== undefined }
    }),
    corner: picking.corner,
    drawing: computed(() =>
      adds.adding.value
        ? { places: adds.places.value, closed: adds.adding.value.lies === 'outline' }
        : undefined,
    ),
    hint: computed(() => placedHint(work, adds.adding.value, picking.picked.value)),
    press,
    pickZone: () => undefined,
    reshape: changes.reshape,
    leave,
  }
  return { tool, snap, problems, ...picking, ...adds, ...changes }
}
