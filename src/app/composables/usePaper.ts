import { onScopeDispose } from 'vue'

/** Inner width of an A4 page on its side, 10 mm margins [px]: (297 - 20) mm at 96 px to the inch. */
const PAGE_PX = 1046

/** Narrower windows print as they are [px]. */
const LEAST_PX = 900

/** Before printing, tells the style sheet how far the sheet must shrink to fit the width of a page. */
export function usePaper(): void {
  const fit = () => {
    const widthPx = document.documentElement.clientWidth
    const { style } = document.documentElement
    const wide = widthPx >= LEAST_PX
    style.setProperty('--print-width', wide ? `${widthPx}px` : 'auto')
    style.setProperty('--print-zoom', wide ? String(PAGE_PX / widthPx) : '1')
  }
  fit()
  addEventListener('resize', fit)
  addEventListener('beforeprint', fit)
  onScopeDispose(() => {
    removeEventListener('resize', fit)
    removeEventListener('beforeprint', fit)
  })
}
