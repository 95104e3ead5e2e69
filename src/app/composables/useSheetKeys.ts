import { onScopeDispose } from 'vue'

/** What keys do on the sheet. */
export interface SheetKeys {
  /** Letters, numbers and arrows are listened to; the person may turn them off. */
  readonly on: () => boolean
  readonly question: (at: number) => void
  readonly zone: (letter: string) => void
  readonly why: () => void
  readonly close: () => void
  readonly step: (metres: number) => void
  readonly undo: () => void
  readonly redo: () => void
}

/** Steps of the rod [m]. */
const STEP_M = 0.5
const LONG_STEP_M = 5

/** Listens to the whole window, but never while something is being typed. */
export function useSheetKeys(keys: SheetKeys): void {
  const listen = (event: KeyboardEvent) => {
    if (event.defaultPrevented || isTyping(event.target)) return
    if (event.ctrlKey || event.metaKey) history(event, keys)
    else if (!event.altKey) plain(event, keys)
  }
  addEventListener('keydown', listen)
  onScopeDispose(() => removeEventListener('keydown', listen))
}

function isTyping(target: EventTarget | null): boolean {
  return (
    target instanceof HTMLElement &&
    (target.isContentEditable ||
      target.closest(
        'input:not([type=checkbox], [type=radio]), select, textarea, dialog, .leaflet-container',
      ) !== null)
  )
}

function history(event: KeyboardEvent, keys: SheetKeys): void {
  const key = event.key.toLowerCase()
  if (key !== 'z' && key !== 'y') return
  event.preventDefault()
  if (key === 'y' || event.shiftKey) keys.redo()
  else keys.undo()
}

function plain(event: KeyboardEvent, keys: SheetKeys): void {
  const { key } = event
  if (key === 'Escape') keys.close()
  else if (!keys.on()) return
  else if (/^[1-7]$/.test(key)) keys.question(Number(key) - 1)
  else if (/^w$/i.test(key)) keys.why()
  else if (/^[a-z]$/i.test(key)) keys.zone(key.toUpperCase())
  else arrow(event, keys)
}

function arrow(event: KeyboardEvent, keys: SheetKeys): void {
  const way = event.key === 'ArrowLeft' ? -1 : event.key === 'ArrowRight' ? 1 : 0
  // Arrows belong to a group of choices while it has the focus.
  if (way === 0 || (event.target instanceof HTMLInputElement && event.target.type === 'radio')) return
  event.preventDefault()
  keys.step(way * (event.shiftKey ? LONG_STEP_M : STEP_M))
}
