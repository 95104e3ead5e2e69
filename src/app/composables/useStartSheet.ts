import type { SurveyTables } from '#core/booking'
import { fieldSheetHtml } from '#report'
import { onScopeDispose, ref } from 'vue'
import { download, fileStem } from './download'
import { reason } from './turns'

/** Blank lines of a printed sheet: what an A4 page holds beside the steps. */
const LINES = 24

/** The field sheet of a method, printed or saved; it asks nothing of any network. */
export function useStartSheet(tables: Pick<SurveyTables, 'methods'>) {
  const trouble = ref('')
  let frame: HTMLIFrameElement | undefined

  const sheet = (methodId: string) => fieldSheetHtml(methodId, tables, { lines: LINES })

  async function told(work: () => Promise<void>): Promise<void> {
    try {
      await work()
      trouble.value = ''
    } catch (error) {
      trouble.value = `The sheet could not be made (${reason(error)}).`
    }
  }

  const print = (methodId: string): Promise<void> =>
    told(async () => {
      const html = await sheet(methodId)
      frame?.remove()
      frame = document.createElement('iframe')
      frame.title = 'Field sheet to print'
      frame.className = 'print-frame'
      frame.tabIndex = -1
      frame.addEventListener('load', () => frame?.contentWindow?.print())
      frame.srcdoc = html
      document.body.append(frame)
    })

  const save = (methodId: string): Promise<void> =>
    told(async () => download(`field-sheet-${fileStem(methodId)}.html`, await sheet(methodId), 'text/html'))

  onScopeDispose(() => frame?.remove())
  return { print, save, trouble }
}
