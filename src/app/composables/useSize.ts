import { onMounted, onScopeDispose, reactive, type ShallowRef } from 'vue'

/** Inner width and height of an element [px]; 0 until it is on the page. */
export function useSize(element: Readonly<ShallowRef<HTMLElement | null>>) {
  const size = reactive({ widthPx: 0, heightPx: 0 })
  const observer = new ResizeObserver(([entry]) => {
    if (!entry) return
    size.widthPx = Math.floor(entry.contentRect.width)
    size.heightPx = Math.floor(entry.contentRect.height)
  })
  onMounted(() => {
    if (!element.value) return
    size.widthPx = Math.floor(element.value.clientWidth)
    size.heightPx = Math.floor(element.value.clientHeight)
    observer.observe(element.value)
  })
  onScopeDispose(() => observer.disconnect())
  return size
}
