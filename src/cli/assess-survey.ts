import type { Findings } from '#plan'
import { heading, wrapped } from './text-layout'

/** What was changed or doubted while the surface was made; nothing when there is nothing to say. */
export function surveyLines({ surface: { notes } }: Findings): readonly string[] {
  if (notes.length === 0) return []
  return [...heading('Of the survey'), ...notes.flatMap(({ what }) => wrapped(what, '* '))]
}
