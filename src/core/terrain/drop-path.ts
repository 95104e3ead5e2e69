import { cellCentre, nearestOnRing, type LevelPoint, type PlanPoint } from '#core/geometry'
import type { Surface } from '#core/survey'
import { crossingOut } from './leaving-crossing'
import { levelOfPlaceM, plotCellAt, riseAt, type Rise } from './place-on-ground'
import type { FlowShares, Terrain } from './terrain.types'

/** The way a drop of water takes over the surface. */
export interface DropPath {
  /** From where it fell to its end; its levels never rise, over a hollow they are those of the hollow's lip [m]. */
  readonly points: readonly LevelPoint[]
  /** Plan length [m]. */
  readonly lengthM: number
  /** Over the boundary, into a part of the plot that is no ground, or nowhere: it stands, as level ground with nothing lower gives it no way. */
  readonly ends: 'boundary' | 'hole' | 'stands'
}

/** Length of a free step down the fall [cells]. */
const STEP_CELLS = 0.5

/** After this many free steps for each row and column the drop goes from cell to cell [count]: it cannot wander for ever. */
const FREE_STEPS = 20

/** Flatter ground gives no direction [m/m]. */
const LEVEL_GRADIENT = 1e-9

/** How far over the edge the last step looks for the boundary [cells]. */
const LAST_STEP_CELLS = 3

/**
 * The path of a drop from any place: down the steepest fall, over hollows to their lip, to where it leaves the plot.
 *
 * @param surface - the ground
 * @param terrain - its facts
 * @param at - where the drop falls [m]
 * @returns its path; undefined when the place is off the plot
 */
export function dropPath(surface: Surface, terrain: Terrain, at: PlanPoint): DropPath | undefined {
  const cell = plotCellAt(surface, at)
  if (cell === undefined) return undefined
  const start = { ...at, levelM: levelOfPlaceM(surface, terrain, at, terrain.filledM) }
  if (stands(surface, terrain, start)) return { points: [start], lengthM: 0, ends: 'stands' }
  const walk: Walk = { surface, terrain, points: [start], freeSteps: 0, cell }
  while (hasLinks(terrain.flow, walk.cell)) {
    const over = stepFreely(walk)
    if (over === 'no') stepToNextCell(walk)
    else if (over !== 'yes') return pathOf(walk, over)
  }
  return pathOf(walk, lastStep(walk))
}

// Nothing makes it run: from here to the way out nothing is lower.
function stands(surface: Surface, terrain: Terrain, start: LevelPoint): boolean {
  const { east, north } = riseAt(surface, terrain, start)
  if (Math.hypot(east, north) >= LEVEL_GRADIENT) return false
  let lowestM = Infinity
  for (const cell of terrain.flow.order) lowestM = Math.min(lowestM, terrain.filledM[cell]!)
  return lowestM >= start.levelM
}

interface Walk {
  readonly surface: Surface
  readonly terrain: Terrain
  readonly points: LevelPoint[]
  freeSteps: number
  cell: number
}

function pathOf({ points }: Walk, over: 'boundary' | 'hole'): DropPath {
  return { points, lengthM: lineLengthM(points), ends: over }
}

/**
 * Plan length of a line of points.
 *
 * @param points - its points in order [m]
 * @returns length [m plan]
 */
export function lineLengthM(points: readonly PlanPoint[]): number {
  return points.reduce((sum, point, at) => {
    const before = points[at - 1] ?? point
    return sum + Math.hypot(point.eastM - before.eastM, point.northM - before.northM)
  }, 0)
}

const hasLinks = ({ starts }: FlowShares, cell: number): boolean => starts[cell] !== starts[cell + 1]

// Half a cell down the fall. 'no' where the ground gives no way down that is sure to end.
function stepFreely(walk: Walk): 'yes' | 'no' | 'boundary' | 'hole' {
  const { surface, terrain, points } = walk
  const { frame } = surface
  const from = points.at(-1)
  const most = FREE_STEPS * (frame.columns + frame.rows)
  const pooled = terrain.filledM[walk.cell]! > surface.levelM[walk.cell]!
  if (!from || pooled || ++walk.freeSteps > most) return 'no'
  const to = nextPlace(surface, terrain, from, -STEP_CELLS * frame.cellM)
  if (!to) return 'no'
  const out = crossingOut(surface, from, to)
  if (out) {
    points.push({
      ...out.at,
      levelM: from.levelM - out.share * fallBetween(riseAt(surface, terrain, from), from, to),
    })
    return out.over
  }
  const cell = plotCellAt(surface, to)
  if (cell === undefined) return 'no'
  const levelM = levelOfPlaceM(surface, terrain, to, terrain.filledM)
  if (!(levelM < from.levelM)) return 'no'
  points.push({ ...to, levelM })
  walk.cell = cell
  return 'yes'
}

/**
 * The place a step up or down the fall from another, by the fall at the middle of the step.
 *
 * @param surface - the ground
 * @param terrain - its facts
 * @param from - where the step begins [m]
 * @param stepM - its plan length uphill [m], negative for downhill
 * @returns its end [m]; undefined where the ground is level
 */
export function nextPlace(
  surface: Surface,
  terrain: Terrain,
  from: PlanPoint,
  stepM: number,
): PlanPoint | undefined {
  const half = stepAlong(from, riseAt(surface, terrain, from), stepM / 2)
  return half && stepAlong(from, riseAt(surface, terrain, half), stepM)
}

function stepAlong(from: PlanPoint, { east, north }: Rise, stepM: number): PlanPoint | undefined {
  const steepness = Math.hypot(east, north)
  if (steepness < LEVEL_GRADIENT) return undefined
  return {
    eastM: from.eastM + (stepM * east) / steepness,
    northM: from.northM + (stepM * north) / steepness,
  }
}

function fallBetween({ east, north }: Rise, from: PlanPoint, to: PlanPoint): number {
  return Math.max(0, -east * (to.eastM - from.eastM) - north * (to.northM - from.northM))
}

// To the middle of the neighbour that takes the most of the cell's water; over a hollow this leads to its lip.
function stepToNextCell(walk: Walk): void {
  const { flow, filledM } = walk.terrain
  let [next, most] = [walk.cell, 0]
  for (let link = flow.starts[walk.cell]!; link < flow.starts[walk.cell + 1]!; link++)
    if (flow.share[link]! > most) [next, most] = [flow.to[link]!, flow.share[link]!]
  const levelM = Math.min(walk.points.at(-1)?.levelM ?? Infinity, filledM[next]!)
  walk.points.push({ ...cellCentre(walk.surface.frame, next), levelM })
  walk.cell = next
}

// From a cell at the edge, where water leaves, to the boundary: down its fall, or the nearest way.
function lastStep({ surface, terrain, points }: Walk): 'boundary' | 'hole' {
  const from = points.at(-1)
  if (!from) return 'boundary'
  const rise = riseAt(surface, terrain, from)
  const to = stepAlong(from, rise, -LAST_STEP_CELLS * surface.frame.cellM)
  const out = to && crossingOut(surface, from, to)
  if (to && out) {
    points.push({ ...out.at, levelM: from.levelM - out.share * fallBetween(rise, from, to) })
    return out.over
  }
  const { at, over } = nearestEdge(surface, from)
  points.push({ ...at, levelM: from.levelM - fallBetween(rise, from, at) })
  return over
}

function nearestEdge(surface: Surface, from: PlanPoint): { at: PlanPoint; over: 'boundary' | 'hole' } {
  const edges = [
    { at: nearestOnRing(surface.boundary, from).at, over: 'boundary' as const },
    ...surface.holes.map((hole) => ({ at: nearestOnRing(hole, from).at, over: 'hole' as const })),
  ]
  return edges.reduce((best, one) =>
    lineLengthM([from, one.at]) < lineLengthM([from, best.at]) ? one : best,
  )
}
