import { createDeriver, openPlan, type Findings, type Plan } from '#plan'
import { loadTables } from '../../src/io/tables'

/** A saved plan, opened and derived. */
export function assessed(text: string): { plan: Plan; findings: Findings } {
  const opened = openPlan(text)
  if (!opened.ok) throw new Error('the plan must open')
  const derived = createDeriver(loadTables()).derive(opened.value)
  if (!derived.ok) throw new Error('the plan must derive')
  return { plan: opened.value, findings: derived.value }
}
