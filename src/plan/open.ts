import type { Outcome, Problem } from '#core/units'
import { migrate, PLAN_VERSION } from './migrate'
import { planSchema, type Plan } from './plan.schema'
import { crossProblems } from './cross-check'
import { problemsOf } from './problems'

/** Longest plan text that is read [characters]: a million-cell grid with room to spare. */
const LONGEST_PLAN = 64_000_000

/**
 * Reads a saved plan: parses, brings older versions up to date, and checks everything once.
 * Nothing past this function checks a plan's shape again.
 *
 * @param text - contents of a `*.lynchet.json` file
 * @returns the plan, or every problem at once with its place and mend
 */
export function openPlan(text: string): Outcome<Plan> {
  const raw = parse(text)
  if (!raw.ok) return raw
  const current = toPresentVersion(raw.value)
  if (!current.ok) return current
  const checked = planSchema.safeParse(current.value)
  if (!checked.success) return { ok: false, problems: problemsOf(checked.error.issues, 'plan') }
  const problems = crossProblems(checked.data)
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: checked.data }
}

/**
 * Writes a plan as text, the same bytes for the same plan.
 *
 * @param plan - the plan to keep
 * @returns contents for a `*.lynchet.json` file, two-space indents, one line end at the end
 */
export function savePlan(plan: Plan): string {
  return `${JSON.stringify(planSchema.parse(plan), null, 2)}\n`
}

type Raw = Readonly<Record<string, unknown>>

const refuse = (problem: Problem): Outcome<never> => ({ ok: false, problems: [problem] })

function parse(text: string): Outcome<Raw> {
  if (text.length > LONGEST_PLAN)
    return refuse({
      where: 'file',
      what: `The file is longer than ${LONGEST_PLAN / 1e6} million characters.`,
      mend: 'Give the grid larger cells, or cut it to the plot.',
    })
  try {
    const raw: unknown = JSON.parse(text.replace(/^\uFEFF/, ''))
    return isRecord(raw)
      ? { ok: true, value: raw }
      : refuse({
          where: 'file',
          what: 'This is not a plan.',
          mend: 'Choose a file whose name ends in .lynchet.json.',
        })
  } catch (error) {
    return refuse({
      where: 'file',
      what: `The file is not readable as JSON${error instanceof Error ? ` (${error.message})` : ''}.`,
      mend: 'It may be cut short or not be a plan. Open a saved copy instead.',
    })
  }
}

function isRecord(value: unknown): value is Raw {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

function toPresentVersion(raw: Raw): Outcome<Raw> {
  if (raw.format !== 'lynchet-plan')
    return refuse({
      where: 'plan › format',
      what: 'The file does not say that it is a Lynchet plan.',
      mend: 'A plan starts with "format": "lynchet-plan". Choose another file.',
    })
  const version = raw.version
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1)
    return refuse({
      where: 'plan › version',
      what: 'The plan does not say which version it is.',
      mend: `Add "version": ${PLAN_VERSION} if it was written by this program.`,
    })
  if (version > PLAN_VERSION)
    return refuse({
      where: 'plan › version',
      what: `This plan is of version ${version}; this program knows version ${PLAN_VERSION}.`,
      mend: 'Open it with a newer Lynchet.',
    })
  const plan = migrate(raw, version)
  return plan
    ? { ok: true, value: plan }
    : refuse({
        where: 'plan › version',
        what: `Version ${version} cannot be brought up to date.`,
        mend: 'Please report this file.',
      })
}
