import sources from '#data/sources'
import type { Source } from '#plan'
import { z } from 'zod'

const sourcesSchema = z.record(
  z.string(),
  z.strictObject({
    kind: z.enum(['published', 'standard', 'common-practice', 'memory', 'own-judgement', 'measured']),
    cite: z.string(),
    note: z.string().optional(),
  }),
)

/**
 * Where figures and rules come from.
 *
 * @returns data/sources.json, checked
 */
export function loadSources(): Readonly<Record<string, Source>> {
  return sourcesSchema.parse(sources)
}
