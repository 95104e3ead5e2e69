import { openPlan, savePlan, type Plan } from '#plan'
import { openDB } from 'idb'
import { ref, watch, type Ref } from 'vue'

const DATABASE = 'lynchet'
const STORE = 'kept'
const KEY = 'plan'

/** Where plans are kept between visits; the test hands in its own. */
export interface Keep {
  read(): Promise<string | undefined>
  write(text: string): Promise<void>
}

/** Keeps text in the browser's own database. */
export function browserKeep(): Keep {
  const database = openDB(DATABASE, 1, { upgrade: (db) => void db.createObjectStore(STORE) })
  return {
    read: async () => {
      const text: unknown = await (await database).get(STORE, KEY)
      return typeof text === 'string' ? text : undefined
    },
    write: async (text) => {
      await (await database).put(STORE, text, KEY)
    },
  }
}

/**
 * Keeps every version of the plan on this device as soon as it is made, so that nothing is lost in a crash.
 *
 * @param plan - the plan on the sheet
 * @param keep - where to keep it
 * @returns when it was last kept, what went wrong, and a reader of the plan kept last time
 */
export function useKeptPlan(plan: Readonly<Ref<Plan | undefined>>, keep: Keep) {
  const keptAt = ref<Date>()
  const trouble = ref('')
  let queue: Promise<void> = Promise.resolve()

  watch(plan, (now) => {
    if (!now) return
    const text = savePlan(now)
    queue = queue
      .then(() => keep.write(text))
      .then(() => {
        keptAt.value = new Date()
        trouble.value = ''
      })
      .catch((error: unknown) => {
        trouble.value = `Not kept on this device (${error instanceof Error ? error.message : String(error)}). Save a copy.`
      })
  })

  /** The plan of last time, if it is there and whole. */
  async function last(): Promise<Plan | undefined> {
    try {
      const text = await keep.read()
      if (text === undefined) return undefined
      const opened = openPlan(text)
      if (opened.ok) return opened.value
      trouble.value = `The plan kept last time cannot be read: ${opened.problems[0]?.what ?? ''}`
    } catch (error) {
      trouble.value = `This browser keeps nothing for us (${error instanceof Error ? error.message : String(error)}). Save a copy before you leave.`
    }
    return undefined
  }

  return { keptAt, trouble, last }
}
