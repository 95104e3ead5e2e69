// How long deriving takes, stage by stage, in a worker: prints a table and judges nothing.
import { mkdirSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { Worker } from 'node:worker_threads'
import { build } from 'vite'

const root = fileURLToPath(new URL('../../', import.meta.url))
const outDir = `${root}node_modules/.cache/bench`
mkdirSync(outDir, { recursive: true })
await build({
  root,
  configFile: false,
  logLevel: 'warn',
  publicDir: false,
  ssr: { noExternal: true, target: 'node' },
  build: {
    ssr: 'tests/bench/bench-worker.ts',
    outDir,
    target: 'node20',
    minify: false,
    rollupOptions: { output: { entryFileNames: 'worker.mjs', format: 'es' } },
  },
})

/** Each worker starts cold: its own heap, its own compiled code. */
const measure = () =>
  new Promise((resolve, reject) => {
    const worker = new Worker(`${outDir}/worker.mjs`)
    worker.once('message', resolve)
    worker.once('error', reject)
  })

const WORKERS = Math.max(1, Number(process.argv[2] ?? 5))
const measured = []
for (let one = 0; one < WORKERS; one++) measured.push(await measure())

// Whatever else the machine does only adds time, so the shortest of several runs says most.
const best = (values) => Math.min(...values)
const copyMs = best(measured.map((one) => one.copyMs))
const ms = (value) => value.toFixed(1).padStart(8)

console.log(`A plot of 100 × 100 cells with five zones; the best of ${WORKERS} workers, each started anew.`)
console.log(
  `One copy of all cells takes ${copyMs.toFixed(4)} ms. Reading the tables takes ${best(measured.map((one) => one.tablesMs)).toFixed(0)} ms.`,
)
for (const [at, { name }] of measured[0].runs.entries()) {
  const runs = measured.map((one) => one.runs[at])
  const totals = runs.map(({ times }) => times.reduce((sum, one) => sum + one.ms, 0))
  const total = best(totals)
  console.log(`\n${name}: ${total.toFixed(0)} ms (the slowest ${Math.max(...totals).toFixed(0)} ms)`)
  console.log('stage                   ms   share   copies')
  for (const [stageAt, { stage }] of runs[0].times.entries()) {
    const time = best(runs.map(({ times }) => times[stageAt].ms))
    const share = `${((100 * time) / total).toFixed(0)} %`
    console.log(`${stage.padEnd(18)}${ms(time)}${share.padStart(8)}${(time / copyMs).toFixed(0).padStart(9)}`)
  }
}
