import { onScopeDispose, reactive, watch, type ShallowRef } from 'vue'

/** Inner width and height of an element [px]; 0 until it is on the page. It may come and go. */
export function useSize(element: Readonly<ShallowRef<HTMLElement | null>>) {
  const size = reactive({ widthPx: 0, heightPx: 0 })
  const observer = new ResizeObserver(([entry]) => {
    if (!entry) return
    size.widthPx = Math.floor(entry.contentRect.width)
    size.heightPx = Math.floor(entry.contentRect.height)
  })
  watch(
    element,
    (now) => {
      observer.disconnect()
      if (!now) return
      size.widthPx = Math.floor(now.clientWidth)
      size.heightPx = Math.floor(now.clientHeight)
      observer.observe(now)
    },
    { immediate: true, flush: 'post' },
  )
  onScopeDispose(() => observer.disconnect())
  return size
}
