import { bookSchema, type Book, type SurveyMethod, type SurveyTables } from '#core/booking'
import { z } from 'zod'
import { computed, onMounted, ref, shallowRef, toRaw } from 'vue'
import { emptyBook, linesOf } from '../edits/field-books'
import type { DraftKeep } from './browserKeep'
import { reason, turns } from './turns'

/** Distances and levels written by hand, with no field book. */
export const TYPED = 'typed'

/** What is kept of a start that is not a plan yet. */
const draftSchema = z.strictObject({ methodId: z.string(), books: z.array(bookSchema).max(20) })

/** Today in this place, ISO 8601. */
export function today(now = new Date()): string {
  const two = (figure: number) => String(figure).padStart(2, '0')
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}

/**
 * The field book that is being written: one for each way of measuring, kept on this device with every reading, so that
 * a shut tab or a flat battery loses nothing.
 *
 * @param tables - the methods
 * @param keep - where it is kept
 */
export function useStartBook(tables: SurveyTables, keep: DraftKeep) {
  const methodId = ref(TYPED)
  const books = shallowRef<ReadonlyMap<string, Book>>(new Map())
  const trouble = ref('')
  const restored = ref(false)
  let touched = false
  const inTurn = turns((words) => (trouble.value = words))

  const method = computed(() => tables.methods.find(({ id }) => id === methodId.value))
  const book = computed(() => method.value && (books.value.get(methodId.value) ?? fresh(method.value)))

  function write(): void {
    touched = true
    const written = [...books.value.values()].map(toRaw).filter((one) => linesOf(one).length > 0)
    const draft = written.length > 0 ? { methodId: methodId.value, books: written } : undefined
    void inTurn(async () => {
      await keep.write(draft)
      trouble.value = ''
    }, 'The book is not kept on this device')
  }

  function choose(id: string): void {
    methodId.value = id
    write()
  }

  function change(next: Book): void {
    books.value = new Map([...books.value, [methodId.value, next]])
    write()
  }

  /** Tears the page out. */
  function clear(): void {
    books.value = new Map([...books.value].filter(([id]) => id !== methodId.value))
    restored.value = false
    write()
  }

  async function restore(): Promise<void> {
    try {
      const draft = draftSchema.safeParse(await keep.read())
      if (!draft.success || touched) return
      books.value = new Map(draft.data.books.map((one) => [one.id, one]))
      methodId.value = draft.data.methodId
      restored.value = book.value !== undefined && linesOf(book.value).length > 0
    } catch (error) {
      trouble.value = `This browser keeps nothing for us (${reason(error)}). Finish the book before you leave.`
    }
  }
  onMounted(restore)

  return { methodId, method, book, restored, trouble, choose, change, clear }
}

const fresh = (method: SurveyMethod): Book | undefined => emptyBook(method, today())
