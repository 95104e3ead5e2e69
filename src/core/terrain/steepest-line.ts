import type { LevelPoint, PlanPoint } from '#core/geometry'
import type { Surface } from '#core/survey'
import { dropPath, lineLengthM, nextPlace } from './drop-path'
import { crossingOut } from './leaving-crossing'
import { levelOfPlaceM, plotCellAt } from './place-on-ground'
import type { Terrain } from './terrain.types'

/** The line of steepest fall through a place, from its top to its foot. */
export interface SteepestLine {
  readonly points: readonly LevelPoint[]
  /** Plan length [m]. */
  readonly lengthM: number
  /** Difference of level between its ends [m]. */
  readonly fallM: number
  /** Plan distance from its top to the place asked about [m]. */
  readonly placeM: number
}

/** Length of a step up the fall [cells]. */
const STEP_CELLS = 0.5

/** Most steps for each row and column [count]. */
const MOST_STEPS = 20

/**
 * The steepest line through a place: up the fall to a top or the boundary, and down it the way a drop goes.
 *
 * @param surface - the ground
 * @param terrain - its facts
 * @param at - the place [m]
 * @returns the line; undefined when the place is off the plot
 */
export function steepestLine(surface: Surface, terrain: Terrain, at: PlanPoint): SteepestLine | undefined {
  const down = dropPath(surface, terrain, at)
  if (!down) return undefined
  const up = wayUp(surface, terrain, down.points[0]!)
  const points = [...up.toReversed(), ...down.points]
  const [top, foot] = [points[0]!, points.at(-1)!]
  return {
    points,
    lengthM: lineLengthM(points),
    fallM: top.levelM - foot.levelM,
    placeM: lineLengthM([...up.toReversed(), down.points[0]!]),
  }
}

// Places above one, nearest first.
function wayUp(surface: Surface, terrain: Terrain, start: LevelPoint): LevelPoint[] {
  const points: LevelPoint[] = []
  const most = MOST_STEPS * (surface.frame.columns + surface.frame.rows)
  for (let from: LevelPoint | undefined = start; from && points.length < most;) {
    const step: StepUp | undefined = stepUp(surface, terrain, from)
    if (!step || !(step.to.levelM > from.levelM)) return points
    points.push(step.to)
    from = step.last ? undefined : step.to
  }
  return points
}

interface StepUp {
  readonly to: LevelPoint
  /** True when it ends on the boundary. */
  readonly last: boolean
}

function stepUp(surface: Surface, terrain: Terrain, from: LevelPoint): StepUp | undefined {
  const to = nextPlace(surface, terrain, from, STEP_CELLS * surface.frame.cellM)
  if (!to) return undefined
  const out = crossingOut(surface, from, to)
  if (out) return { to: { ...out.at, levelM: levelAtEdgeM(surface, terrain, from, out.at) }, last: true }
  if (plotCellAt(surface, to) === undefined) return undefined
  return { to: { ...to, levelM: levelOfPlaceM(surface, terrain, to, terrain.filledM) }, last: false }
}

// A place on the boundary itself may lie on no cell: read it a hair inwards, on the fall of the step.
function levelAtEdgeM(surface: Surface, terrain: Terrain, from: LevelPoint, edge: PlanPoint): number {
  const inner = {
    eastM: edge.eastM + HAIR * (from.eastM - edge.eastM),
    northM: edge.northM + HAIR * (from.northM - edge.northM),
  }
  if (plotCellAt(surface, inner) === undefined) return from.levelM
  return levelOfPlaceM(surface, terrain, inner, terrain.filledM)
}

/** How far inwards a place on the boundary is read [share of the step]. */
const HAIR = 1e-9
