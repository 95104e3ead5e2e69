import { parentPort } from 'node:worker_threads'
import { loadTables } from '#io'
import { createDeriver, type Deriver, type Plan } from '#plan'
import { benchPlan, chosen, renamed } from './bench-plan'

/** Times of one derivation, stage by stage [ms]. */
type Times = readonly { readonly stage: string; readonly ms: number }[]

function timed(deriver: Deriver, plan: Plan): Times {
  const times: { stage: string; ms: number }[] = []
  const steps = deriver.steps(plan)
  let stage = 'reading the plan'
  for (;;) {
    const before = performance.now()
    const step = steps.next()
    times.push({ stage, ms: performance.now() - before })
    if (step.done) {
      if (!step.value.ok) throw new Error(step.value.problems.map(({ what }) => what).join(' '))
      return times
    }
    stage = step.value.stage
  }
}

/** Time of one plain pass over the cells, copying each [ms]: what any stage costs at least. */
function copyMs(cells: number): number {
  const from = Float64Array.from({ length: cells }, (_, cell) => cell)
  const to = new Float64Array(cells)
  const PASSES = 2000
  const before = performance.now()
  for (let pass = 0; pass < PASSES; pass++)
    for (let cell = 0; cell < cells; cell++) to[cell] = (from[cell] ?? 0) + pass
  return (performance.now() - before) / PASSES
}

const started = performance.now()
const tables = loadTables()
const tablesMs = performance.now() - started
const drawn = benchPlan(tables.places, true)
const suggested = benchPlan(tables.places, false)
const cold = createDeriver(tables)
const runs = [
  { name: 'cold', times: timed(cold, drawn) },
  { name: 'renamed', times: timed(cold, renamed(drawn)) },
  { name: 'cover chosen', times: timed(cold, chosen(renamed(drawn))) },
  { name: 'again, anew', times: timed(createDeriver(tables), drawn) },
  { name: 'zones suggested', times: timed(createDeriver(tables), suggested) },
]
parentPort?.postMessage({ tablesMs, copyMs: copyMs(10_000), runs })
