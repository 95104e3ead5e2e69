import type { Beyond } from './plan-survey.schema'

/**
 * The stretches of the boundary as the ground's water takes them: a watercourse beyond carries its water away along the
 * boundary and sheds none onto the plot.
 */
export function sheddingBeyond(beyond: readonly Beyond[] = []): readonly Omit<Beyond, 'name' | 'what'>[] {
  return beyond.map(({ id, from, to, what, uphillM }) => ({
    id,
    from,
    to,
    uphillM: what === 'watercourse' ? undefined : uphillM,
  }))
}
