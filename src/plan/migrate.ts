/** The version that this program writes. */
export const PLAN_VERSION = 3

type Raw = Readonly<Record<string, unknown>>

/** Step n turns a plan of version n into one of version n + 1. */
const steps: Readonly<Record<number, (older: Raw) => Raw>> = {
  // Version 2 adds field books, breaklines, holes and what lies beyond the boundary; all may be left out.
  1: (older) => ({ ...older, version: 2 }),
  // Version 3 adds what things in the light let through, far skylines, trials and measured radiation; all may be left out.
  2: (older) => ({ ...older, version: 3 }),
}

/**
 * Brings an older plan up to the present version, a step at a time.
 *
 * @returns the plan in the present form, or undefined when a step is missing
 */
export function migrate(raw: Raw, fromVersion: number): Raw | undefined {
  let plan: Raw | undefined = raw
  for (let version = fromVersion; version < PLAN_VERSION && plan; version++) plan = steps[version]?.(plan)
  return plan
}
