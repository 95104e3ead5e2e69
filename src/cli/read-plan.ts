import { loadTables } from '#io'
import { createDeriver, openPlan, type Findings, type Plan } from '#plan'
import type { Outcome } from '#core/units'
import { readText } from './console'

/** A plan and all that follows from it. */
export interface Assessed {
  readonly plan: Plan
  readonly findings: Findings
}

/** Opens a plan file and derives its findings. */
export function assessFile(file: string): Outcome<Assessed> {
  const opened = openPlan(readText(file))
  if (!opened.ok) return opened
  const derived = createDeriver(loadTables()).derive(opened.value)
  return derived.ok ? { ok: true, value: { plan: opened.value, findings: derived.value } } : derived
}
