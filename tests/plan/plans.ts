import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { loadTables } from '#io'
import { createDeriver, newPlan, openPlan, type Findings, type Plan } from '#plan'
import type { BankSurvey, GroundSurvey } from '#core/survey'

export const tables = loadTables()

/** A demo by name, opened. */
export function demo(name: string): Plan {
  const opened = openPlan(
    readFileSync(join(import.meta.dirname, '../../data/demos', `${name}.lynchet.json`), 'utf8'),
  )
  if (!opened.ok) throw new Error(opened.problems.map(({ what }) => what).join('\n'))
  return opened.value
}

/** Findings of a plan that must have some. */
export function found(plan: Plan, deriver = createDeriver(tables)): Findings {
  const derived = deriver.derive(plan)
  if (!derived.ok) throw new Error(derived.problems.map(({ where, what }) => `${where}: ${what}`).join('\n'))
  return derived.value
}

/** A new plan on some ground at 52° north, 2° west. */
export function planOn(ground: GroundSurvey): Plan {
  return newPlan({ name: 'A bank', ground, latitudeDeg: 52, longitudeDeg: -2, places: tables.places })
}

export const bank: BankSurvey = { kind: 'bank', lengthM: 12, riseM: 4, facesDeg: 180, widthM: 10 }
