import { onScopeDispose, reactive } from 'vue'

/** Width and height of the window [px]. */
export function useWindowSize() {
  const size = reactive({ widthPx: innerWidth, heightPx: innerHeight })
  const measure = () => {
    size.widthPx = innerWidth
    size.heightPx = innerHeight
  }
  addEventListener('resize', measure)
  onScopeDispose(() => removeEventListener('resize', measure))
  return size
}
