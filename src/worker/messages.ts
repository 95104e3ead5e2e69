import type { Problem } from '#core/units'
import type { Findings, Plan } from '#plan'

/** What the page asks of the worker. A newer question drops an older one. */
export type Ask =
  { readonly kind: 'derive'; readonly id: number; readonly plan: Plan } | { readonly kind: 'cancel' }

/** What the worker tells the page. */
export type Answer =
  | { readonly kind: 'stage'; readonly id: number; readonly stage: string; readonly done: number }
  | { readonly kind: 'findings'; readonly id: number; readonly findings: Findings }
  | { readonly kind: 'problems'; readonly id: number; readonly problems: readonly Problem[] }
  | { readonly kind: 'failed'; readonly id: number; readonly message: string }
