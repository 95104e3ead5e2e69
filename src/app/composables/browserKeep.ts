import { openDB } from 'idb'

const DATABASE = 'lynchet'
const STORE = 'kept'

/** A plan that made way for another, and can be opened again. */
export interface SetAside {
  readonly name: string
  /** When it made way, as an ISO date and time. */
  readonly at: string
  readonly text: string
}

/** Where plans are kept between visits; the test hands in its own. */
export interface Keep {
  /** The plan of last time, as text. */
  readonly read: () => Promise<string | undefined>
  readonly write: (text: string) => Promise<void>
  /** Plans that made way for others, newest first. */
  readonly readAside: () => Promise<readonly SetAside[]>
  readonly writeAside: (plans: readonly SetAside[]) => Promise<void>
}

/** Where a half-written field book is kept; the test hands in its own. */
export interface DraftKeep {
  readonly read: () => Promise<unknown>
  readonly write: (draft: unknown) => Promise<void>
}

const openStore = () => openDB(DATABASE, 1, { upgrade: (db) => void db.createObjectStore(STORE) })

/** Keeps a half-written field book in the browser's own database, beside the plans. */
export function browserDraftKeep(): DraftKeep {
  const database = openStore()
  return {
    read: async () => (await database).get(STORE, 'draft') as Promise<unknown>,
    write: async (draft) => void (await (await database).put(STORE, draft, 'draft')),
  }
}

/** Keeps text in the browser's own database. */
export function browserKeep(): Keep {
  const database = openStore()
  const get = async (key: string): Promise<unknown> => (await database).get(STORE, key)
  const put = async (key: string, value: unknown): Promise<void> => {
    await (await database).put(STORE, value, key)
  }
  return {
    read: async () => {
      const text = await get('plan')
      return typeof text === 'string' ? text : undefined
    },
    write: (text) => put('plan', text),
    readAside: async () => {
      const plans = await get('aside')
      return Array.isArray(plans) ? plans.filter(isSetAside) : []
    },
    writeAside: (plans) => put('aside', plans),
  }
}

function isSetAside(value: unknown): value is SetAside {
  return (
    typeof value === 'object' &&
    value !== null &&
    ['name', 'at', 'text'].every((key) => typeof (value as Record<string, unknown>)[key] === 'string')
  )
}
