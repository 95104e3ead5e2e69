// How long deriving takes, stage by stage, in a worker, and how long terrain and sun take beside other programs:
// prints tables and judges nothing.
import { mkdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { Worker } from 'node:worker_threads'
import { build } from 'vite'

const root = fileURLToPath(new URL('../../', import.meta.url))
const outDir = `${root}node_modules/.cache/bench`
mkdirSync(outDir, { recursive: true })
for (const name of ['bench-worker', 'terrain-worker', 'sun-worker', 'garden-worker'])
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

/** Everything that a worker of its own tells. */
const told = (name, workerData) =>
  new Promise((resolve, reject) => {
    const messages = []
    const worker = new Worker(`${outDir}/${name}.mjs`, { workerData })
    worker.on('message', (message) => messages.push(message))
    worker.once('exit', () => resolve(messages))
    worker.once('error', reject)
  })

const us = (value) => value.toFixed(3).padStart(8)

/** Processor time of each job beside other programs, and how it grows with the number of cells. */
function tellJobs(title, times, truthFile, growsLike) {
  const truth = JSON.parse(readFileSync(`${root}tests/truth/${truthFile}.json`, 'utf8'))
  const at = (name, side) => times.find((time) => time.name === name && time.side === side)?.usPerCell ?? NaN
  const names = [...new Set(times.flatMap(({ name }) => (name === undefined ? [] : [name])))]
  console.log(
    `\n${title} of 1000 × 1000 cells, one thread, once warm: processor time [µs a cell], the best of ${RUNS}`,
  )
  for (const name of names) {
    const own = at(name, 1000)
    console.log(`${name.padEnd(46)}${us(own)}`)
    for (const { job, program, usPerCell } of truth.programs)
      if (job === name)
        console.log(`  ${program.padEnd(44)}${us(usPerCell)}  ${(usPerCell / own).toFixed(1)} times as long`)
  }
  console.log(
    `\nGrowth of the time beside that of ${growsLike.name}, from ${SIDES[0]} × ${SIDES[0]} cells (1 is ${growsLike.name})`,
  )
  console.log(`${' '.repeat(46)}${SIDES.map((side) => `${side}²`.padStart(8)).join('')}`)
  for (const name of names) {
    const growth = SIDES.map((side) => at(name, side) / at(name, SIDES[0]) / growsLike.ofCells(side ** 2))
    console.log(`${name.padEnd(46)}${growth.map((ratio) => ratio.toFixed(2).padStart(8)).join('')}`)
  }
}

tellJobs('Terrain', await told('terrain-worker', { sides: SIDES, runs: RUNS }), 'terrain-speed', {
  name: 'n log n',
  ofCells: (cells) => Math.log(cells) / Math.log(SIDES[0] ** 2),
})

const sun = await told('sun-worker', { sides: SIDES, runs: RUNS })
tellJobs('Sun and shade', sun, 'sun-speed', { name: 'n', ofCells: () => 1 })

const byDirections = sun.filter(({ directions }) => directions !== undefined)
console.log('\nSkylines of 500 × 500 cells: processor time [µs a cell], and growth beside the directions')
for (const { directions, usPerCell } of byDirections) {
  const growth = usPerCell / byDirections[0].usPerCell / (directions / byDirections[0].directions)
  console.log(`${`${directions} directions`.padEnd(46)}${us(usPerCell)}${growth.toFixed(2).padStart(8)}`)
}

const gardens = []
for (let one = 0; one < WORKERS; one++) gardens.push((await told('garden-worker'))[0])
const cold = gardens.map(({ coldMs }) => coldMs)
console.log(
  `\nTwelve days on a garden of 100 × 120 cells with five things in the light, skylines reckoned too, in a worker:`,
)
console.log(
  `the first time ${best(cold).toFixed(0)} ms (the slowest of ${WORKERS} workers ${Math.max(...cold).toFixed(0)} ms), ` +
    `again ${best(gardens.map(({ warmMs }) => warmMs)).toFixed(0)} ms; ` +
    `${(best(cold) / copyMs).toFixed(0)} copies of 10,000 cells the first time`,
)
