import type { Outcome } from '#core/units'
import type { Plan } from '#plan'

/** What was measured, of a plan. */
export type Survey = Plan['survey']

/** The plan with some of its survey changed. */
export const withSurvey = (plan: Plan, change: Partial<Survey>): Outcome<Plan> => ({
  ok: true,
  value: { ...plan, survey: { ...plan.survey, ...change } },
})

/** A list with one row changed. */
export const changedAt = <Row>(rows: readonly Row[], at: number, row: Row): Row[] =>
  rows.map((each, index) => (index === at ? row : each))

/** A list without one of its rows. */
export const without = <Row>(rows: readonly Row[], at: number): Row[] =>
  rows.filter((_, index) => index !== at)

/** An id that no row has yet: `line-1`, `line-2`. */
export function freeId(rows: readonly { readonly id: string }[], stem: string): string {
  const taken = new Set(rows.map(({ id }) => id))
  for (let number = 1; ; number++) if (!taken.has(`${stem}-${number}`)) return `${stem}-${number}`
}
