import { parentPort, workerData } from 'node:worker_threads'
import { dayOnGround, skylinesAround, type DayChoice, type Shading } from '#core/shade'
import { groundFacts, type Terrain } from '#core/terrain'
import { processorUs } from './processor-us'
import { squareSurface } from './square-surface'

type Cells = Pick<Terrain, 'slopeDeg' | 'aspectDeg'>

/** One job on a grid. */
interface Job {
  readonly name: string
  readonly run: (shading: Shading, cells: Cells) => unknown
}

/** The day, place and air that the reference programs were timed with. */
const choice: DayChoice = {
  latitudeDeg: 52,
  elevationM: 100,
  linke: 3,
  albedo: 0.2,
  dayOfYear: 80,
  stepHours: 0.5,
}

const jobs: readonly Job[] = [
  {
    name: 'one clear day, shadows cast',
    run: (shading, cells) => dayOnGround(shading, cells, choice),
  },
  {
    name: 'one clear day, no shadows cast',
    run: (shading, cells) => dayOnGround(shading, cells, { ...choice, castShadows: false, skyline: false }),
  },
  { name: 'skylines in 12 directions', run: ({ ground }) => skylinesAround(ground, 12) },
]

/** Numbers of directions that the time of skylines is told for [count]. */
const DIRECTIONS = [12, 24, 48, 96] as const
/** Side of the grid that it is told on [cells]. */
const DIRECTIONS_SIDE = 500

interface Scene {
  readonly shading: Shading
  readonly cells: Cells
}

function sceneOf(side: number): Scene {
  const surface = squareSurface(side)
  return { shading: { ground: surface, standing: [], far: [] }, cells: groundFacts(surface).steepness() }
}

/** Processor time of a cell: the best of some runs [µs]. */
function usPerCell(run: Job['run'], { shading, cells }: Scene, runs: number): number {
  let best = Infinity
  for (let one = 0; one < runs; one++) {
    const before = processorUs()
    run(shading, cells)
    best = Math.min(best, processorUs() - before)
  }
  return best / shading.ground.share.length
}

const { sides, runs } = workerData as { sides: number[]; runs: number }
const smallest = sceneOf(Math.min(...sides))
for (const { run } of jobs) usPerCell(run, smallest, runs)
for (const side of sides) {
  const scene = sceneOf(side)
  for (const { name, run } of jobs)
    parentPort?.postMessage({ side, name, usPerCell: usPerCell(run, scene, runs) })
}
const middling = sceneOf(DIRECTIONS_SIDE)
for (const directions of DIRECTIONS)
  parentPort?.postMessage({
    directions,
    usPerCell: usPerCell(({ ground }) => skylinesAround(ground, directions), middling, runs),
  })
