import type { ComputedRef, Ref } from 'vue'
import type { PlanPoint } from '#core/geometry'
import type { Shape } from '../components/plan/map-handles'

/** What the plan does with a touch, a drag or a picked zone, while one kind of thing is worked on. */
export interface MapTool {
  readonly shape: ComputedRef<Shape | undefined>
  readonly corner: Ref<number>
  readonly drawing: ComputedRef<
    { readonly places: readonly PlanPoint[]; readonly closed: boolean } | undefined
  >
  readonly hint: ComputedRef<string>
  /** A place was touched; `reachM` says how near is near enough. True when it meant something. */
  readonly press: (at: PlanPoint, reachM: number) => boolean
  readonly pickZone: (zoneId: string) => void
  readonly reshape: (ring: readonly PlanPoint[]) => void
  /** Back to looking; false when there was nothing to leave. */
  readonly leave: () => boolean
}
