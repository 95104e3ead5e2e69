import { onScopeDispose, watch, type ShallowRef } from 'vue'

/** Told where the pointer is over the drawing; the rod’s slider does the same from the keyboard. */
export interface AxisPointer {
  readonly move: (clientXPx: number) => void
  readonly pick: (clientXPx: number) => void
}

/** Places on the drawing that have a press of their own. */
const OWN_PRESS = '.small-plan, button, a'

/** Follows mouse, pen and finger over an element. */
export function useAxisPointer(element: Readonly<ShallowRef<HTMLElement | null>>, told: AxisPointer): void {
  const free = ({ target }: Event) => target instanceof Element && target.closest(OWN_PRESS) === null
  const move = (event: PointerEvent) => free(event) && told.move(event.clientX)
  const pick = (event: MouseEvent) => free(event) && told.pick(event.clientX)
  const leave = (from: HTMLElement | null | undefined) => {
    from?.removeEventListener('pointermove', move)
    from?.removeEventListener('click', pick)
  }
  watch(
    element,
    (now, before) => {
      leave(before)
      now?.addEventListener('pointermove', move)
      now?.addEventListener('click', pick)
    },
    { immediate: true },
  )
  onScopeDispose(() => leave(element.value))
}
