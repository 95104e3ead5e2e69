import type { Outcome } from '#core/units'

/**
 * A file that cannot be used, as an outcome.
 *
 * @param where - file, line or entry
 * @param what - what is wrong, a sentence
 * @param mend - what to do, a sentence
 * @returns the outcome
 */
export function refusal(where: string, what: string, mend: string): Outcome<never> {
  return { ok: false, problems: [{ where, what, mend }] }
}
