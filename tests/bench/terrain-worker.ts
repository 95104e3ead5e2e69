import { parentPort, workerData } from 'node:worker_threads'
import type { Surface } from '#core/survey'
import { groundFacts, terrainOf, type GroundFacts } from '#core/terrain'
import { processorUs } from './processor-us'
import { squareSurface } from './square-surface'

/** One job: what is ready before the clock starts, and what is timed. */
interface Job {
  readonly name: string
  readonly before: (facts: GroundFacts) => void
  readonly run: (facts: GroundFacts, surface: Surface) => unknown
}

const jobs: readonly Job[] = [
  { name: 'slope and aspect', before: () => undefined, run: (facts) => facts.steepness() },
  { name: 'depression filling', before: (facts) => facts.hood(), run: (facts) => facts.filledM() },
  {
    name: 'multiple flow, from bare levels',
    before: (facts) => facts.steepness(),
    run: (facts) => facts.accumulation(),
  },
  {
    name: 'multiple flow, hollows filled before',
    before: (facts) => [facts.steepness(), facts.filledM()],
    run: (facts) => facts.accumulation(),
  },
  {
    name: 'wetness, from bare levels',
    before: () => undefined,
    run: (facts) => facts.wetnessIndexRaw(),
  },
  {
    name: 'wetness of the generalised ground',
    before: () => undefined,
    run: (facts) => facts.wetnessIndex(),
  },
  {
    name: 'one steepest way, from bare levels',
    before: (facts) => facts.steepness(),
    run: (facts) => facts.accumulationD8(),
  },
  { name: 'all facts of the terrain', before: () => undefined, run: (_facts, surface) => terrainOf(surface) },
]

/** Processor time of a cell, once warm: the best of some runs, each on facts not yet worked out [µs]. */
function usPerCell(job: Job, surface: Surface, runs: number): number {
  let best = Infinity
  for (let run = 0; run < runs; run++) {
    const facts = groundFacts(surface)
    job.before(facts)
    const before = processorUs()
    job.run(facts, surface)
    best = Math.min(best, processorUs() - before)
  }
  return best / surface.share.length
}

const { sides, runs } = workerData as { sides: number[]; runs: number }
// Once warm: code that runs for the first time is slower.
const smallest = squareSurface(Math.min(...sides))
for (const job of jobs) usPerCell(job, smallest, runs)
for (const side of sides) {
  const surface = squareSurface(side)
  for (const job of jobs)
    parentPort?.postMessage({ side, name: job.name, usPerCell: usPerCell(job, surface, runs) })
}
