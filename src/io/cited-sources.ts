import type { Source } from '#plan'
import { loadSources } from './source-table'

/**
 * Every source that a result names, with what it stands for.
 *
 * @param result - any result: objects and lists with `source` entries anywhere inside
 * @returns the sources by key
 * @throws RangeError when a key is not in data/sources.json
 */
export function citedSources(result: unknown): Readonly<Record<string, Source>> {
  const table = loadSources()
  const keys = new Set<string>()
  gather(result, keys)
  return Object.fromEntries(
    [...keys].sort().map((key) => {
      const source = table[key]
      if (!source) throw new RangeError(`citedSources: “${key}” must be a key of data/sources.json`)
      return [key, source]
    }),
  )
}

function gather(value: unknown, keys: Set<string>): void {
  if (typeof value !== 'object' || value === null || ArrayBuffer.isView(value)) return
  for (const [name, entry] of Object.entries(value)) {
    if (name === 'source' && typeof entry === 'string') keys.add(entry)
    else gather(entry, keys)
  }
}
