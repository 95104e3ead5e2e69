import type { Outcome } from '#core/units'

/** An edit that cannot be made: where, why, and what to do instead. */
export const refused = (where: string, what: string, mend: string): Outcome<never> => ({
  ok: false,
  problems: [{ where, what, mend }],
})

/** An edit of something that is no longer there, as when it was taken out in another place. */
export const gone = (where: string): Outcome<never> =>
  refused(where, 'It is not in the plan any more.', 'Undo, or pick another.')
