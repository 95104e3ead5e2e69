import { parentPort } from 'node:worker_threads'
import { standingOf, sunOnGround, type Shading, type Thing } from '#core/shade'
import { groundFacts } from '#core/terrain'
import { eachMonth } from '#core/units'
import { loadTables } from '#io'

const COLUMNS = 100
const ROWS = 120
const CELL_M = 0.5
const LATITUDE_DEG = 51.5

const at = (eastM: number, northM: number) => ({ eastM, northM })

/** A house with a ridge, a wall, a fence, a hedge and a tree. */
const things: readonly Thing[] = [
  {
    id: 'house',
    name: 'House',
    kind: 'house',
    ring: [at(8, -9), at(20, -9), at(20, -1), at(8, -1)],
    heightM: 5,
    ridgeM: 8,
  },
  { id: 'wall', name: 'Wall', kind: 'wall', ring: [at(10, 30), at(34, 30)], heightM: 1.2 },
  { id: 'fence', name: 'Fence', kind: 'fence', ring: [at(50, 0), at(50, 60)], heightM: 1.8 },
  { id: 'hedge', name: 'Hedge', kind: 'hedge', ring: [at(0, 0), at(0, 60)], heightM: 2.5 },
  { id: 'tree', name: 'Tree', kind: 'tree', ring: [at(35, 15)], heightM: 9 },
]

/** A slope that falls to the south with a terrace and a hollow. */
function levelM(east: number, north: number): number {
  return 8 * north + 1.5 / (1 + Math.exp((0.5 - north) * 40)) - 0.8 * Math.exp(-(((east - 0.6) * 6) ** 2))
}

function garden() {
  const levels = Float64Array.from({ length: COLUMNS * ROWS }, (_, cell) =>
    levelM((cell % COLUMNS) / COLUMNS, 1 - Math.floor(cell / COLUMNS) / ROWS),
  )
  return {
    frame: { columns: COLUMNS, rows: ROWS, cellM: CELL_M, westM: 0, southM: 0 },
    levelM: levels,
    share: new Float64Array(levels.length).fill(1),
  }
}

const ground = garden()
const standing = standingOf(things, ground, loadTables().shade, LATITUDE_DEG)
const cells = groundFacts({
  ...ground,
  boundary: [],
  holes: [],
  tin: undefined,
  highestM: Math.max(...ground.levelM),
  lowestM: Math.min(...ground.levelM),
  fallM: 0,
  facesDeg: undefined,
  notes: [],
}).steepness()
const shading: Shading = { ground, standing, far: [] }
const site = { latitudeDeg: LATITUDE_DEG, elevationM: 50, linke: 3, albedo: 0.2 }
const usual = eachMonth(() => ({ levelWhPerM2: 3000, diffuseShare: 0.5 }))

/** Wall time of twelve days with all the skylines [ms]. */
function yearMs(): number {
  const before = performance.now()
  sunOnGround(shading, cells, { site, usual })
  return performance.now() - before
}

const WARM_RUNS = 5
const coldMs = yearMs()
const warmMs = Math.min(...Array.from({ length: WARM_RUNS }, yearMs))
parentPort?.postMessage({ coldMs, warmMs, things: standing.length })
