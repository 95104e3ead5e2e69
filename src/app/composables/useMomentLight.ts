import { computed, onScopeDispose, ref, shallowRef, watch } from 'vue'
import { directLight } from '#core/shade'
import type { Direction } from '#core/sun'
import type { Month } from '#core/units'
import { shadingOf, type Findings, type Plan } from '#plan'
import { litAreas, squaresOf, withoutTurnedAway, type LitAreas, type MomentLight } from './momentLight'
import type { SunMoment } from './useSunMoment'

/** Most cells whose shadows are drawn while a slider moves [count]; above it when it rests. */
const AT_ONCE_CELLS = 40_000
/** A slider rests when it has not moved for so long [ms]. */
const REST_MS = 160

/** What throws shadows: the plan with what was derived from it. */
interface Ground {
  readonly plan: Plan
  readonly findings: Findings
}

/**
 * Who is in the sun at the moment that is picked: at once in a garden, when the slider rests on a large site;
 * nothing while nobody looks.
 */
export function useMomentLight(of: () => Ground, moment: SunMoment, on: () => boolean) {
  const light = shallowRef<MomentLight>()
  /** The picture is of an earlier moment: the slider moves. */
  const late = ref(false)
  const lit = computed(() => (on() ? lightMaker(of()) : undefined))
  const coarse = computed(() => of().findings.surface.share.length > AT_ONCE_CELLS)
  let resting: ReturnType<typeof setTimeout> | undefined

  function show(): void {
    clearTimeout(resting)
    late.value = false
    light.value = lit.value?.(moment.stands.value.sun, moment.month.value)
  }

  function whenAtRest(): void {
    late.value = true
    clearTimeout(resting)
    resting = setTimeout(show, REST_MS)
  }

  watch([lit, moment.stands, moment.month], ([ground], [before]) =>
    coarse.value && before === ground ? whenAtRest() : show(),
  )
  show()
  onScopeDispose(() => clearTimeout(resting))

  /** Lights the same ground at other moments. */
  function areasOf(): (sun: Direction, month: Month) => LitAreas {
    const other = lightMaker(of())
    return (sun, month) => other(sun, month).areas
  }

  return { light, late, coarse, ground: lit, areasOf }
}

export type ShownLight = ReturnType<typeof useMomentLight>

/** Lights the same ground at one moment after another, in the same memory. */
function lightMaker({ plan, findings }: Ground): (sun: Direction, month: Month) => MomentLight {
  const { frame, share } = findings.surface
  const shading = shadingOf(plan, findings)
  const squares = squaresOf(findings.terrain)
  const light = new Float32Array(share.length)
  return (sun, month) => {
    directLight(shading, sun, month, light)
    withoutTurnedAway(light, squares, sun)
    return { frame, share, light, areas: litAreas(light, share, frame.cellM) }
  }
}
