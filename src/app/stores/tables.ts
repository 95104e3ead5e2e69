import { loadTables } from '#io'
import type { Tables } from '#plan'

let tables: Tables | undefined

/** Every table of data/, read once and only when first wanted. */
export function useTables(): Tables {
  tables ??= loadTables()
  return tables
}
