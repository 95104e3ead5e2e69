// How long deriving takes, stage by stage, in a worker, and how long facts of the terrain take beside other programs:
// prints tables and judges nothing.
import { mkdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { Worker } from 'node:worker_threads'
import { build } from 'vite'

const root = fileURLToPath(new URL('../../', import.meta.url))
const outDir = `${root}node_modules/.cache/bench`
mkdirSync(outDir, { recursive: true })
for (const name of ['bench-worker', 'terrain-worker'])
  await build({
    root,
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    ssr: { noExternal: true, target: 'node' },
    build: {
      ssr: `tests/bench/${name}.ts`,
      outDir,
      emptyOutDir: false,
      target: 'node20',
      minify: false,
      rollupOptions: { output: { entryFileNames: `${name}.mjs`, format: 'es' } },
    },
  })

/** Each worker starts cold: its own heap, its own compiled code. */
const measure = () =>
  new Promise((resolve, reject) => {
    const worker = new Worker(`${outDir}/bench-worker.mjs`)
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

const SIDES = [250, 500, 1000, 2000]
const RUNS = 5

/** Processor time of each job on each size of grid, in a worker of its own [µs a cell]. */
const measureTerrain = () =>
  new Promise((resolve, reject) => {
    const times = []
    const worker = new Worker(`${outDir}/terrain-worker.mjs`, { workerData: { sides: SIDES, runs: RUNS } })
    worker.on('message', (time) => times.push(time))
    worker.once('exit', () => resolve(times))
    worker.once('error', reject)
  })

const times = await measureTerrain()
const truth = JSON.parse(readFileSync(`${root}tests/truth/terrain-speed.json`, 'utf8'))
const at = (name, side) => times.find((time) => time.name === name && time.side === side)?.usPerCell ?? NaN
const us = (value) => value.toFixed(3).padStart(8)
const names = [...new Set(times.map(({ name }) => name))]

console.log(
  `\nTerrain of 1000 × 1000 cells, one thread, once warm: processor time [µs a cell], the best of ${RUNS}`,
)
for (const name of names) {
  console.log(`${name.padEnd(46)}${us(at(name, 1000))}`)
  for (const { job, program, usPerCell } of truth.programs)
    if (job === name) console.log(`  ${program.padEnd(44)}${us(usPerCell)}`)
}

/** How much a job grew from the smallest grid, over how much n log n did: 1 is n log n, less is better. */
const growth = (name, side) => {
  const logs = Math.log(side ** 2) / Math.log(SIDES[0] ** 2)
  return at(name, side) / at(name, SIDES[0]) / logs
}
console.log(
  `\nGrowth of the time beside that of n log n, from ${SIDES[0]} × ${SIDES[0]} cells (1 is n log n)`,
)
console.log(`${' '.repeat(46)}${SIDES.map((side) => `${side}²`.padStart(8)).join('')}`)
for (const name of names)
  console.log(`${name.padEnd(46)}${SIDES.map((side) => growth(name, side).toFixed(2).padStart(8)).join('')}`)
