import {
  cellAt,
  cellCentre,
  distanceToSegmentM,
  sides,
  signedAreaM2,
  type GridFrame,
  type PlanPoint,
} from '#core/geometry'
import type { Surface } from '#core/survey'
import type { Gradients } from './gradients'
import { ALL_AROUND, type Neighbourhood } from './neighbours'

/** Water runs along a side that it meets at a flatter angle than 20° (sine); own judgement [m/m]. */
const CROSSES_SIDE = Math.sin((20 * Math.PI) / 180)

/** A side farther from a cell's centre than this is not the cell's own edge [cells]. */
const NEAR_CELLS = 1

/** Ground flatter than this falls nowhere [m/m]. */
const LEVEL_GRADIENT = 1e-9

/** Level where the straight fall through a cell crosses the boundary, one value per cell [m]. */
export interface EdgeFalls {
  /** 1 for each cell whose ground falls straight out of the plot. */
  readonly leaves: Uint8Array
  /** Level of the boundary below such a cell [m]. */
  readonly footM: Float64Array
  /** 1 for each cell with the boundary straight uphill. */
  readonly begins: Uint8Array
  /** Level of the boundary above such a cell [m]. */
  readonly topM: Float64Array
}

/**
 * Where the ground at the edge of the plot falls out of it, and where it begins.
 *
 * @param surface - the ground
 * @param hood - its cells and their neighbours
 * @param slopes - gradients of every cell [m/m]
 * @returns boundary levels below and above the cells at the edge [m]
 */
export function edgeFalls(surface: Surface, hood: Neighbourhood, slopes: Gradients): EdgeFalls {
  const { share, levelM, frame } = surface
  const falls = {
    leaves: new Uint8Array(share.length),
    footM: new Float64Array(share.length),
    begins: new Uint8Array(share.length),
    topM: new Float64Array(share.length),
  }
  const near = sidesNear(surface)
  for (let cell = 0; cell < share.length; cell++) {
    if (!hood.inside[cell] || hood.around[cell] === ALL_AROUND) continue
    const [east, north] = [slopes.east[cell] ?? 0, slopes.north[cell] ?? 0]
    const edge = { frame, hood, sides: near.get(cell) ?? [], centre: cellCentre(frame, cell) }
    enterFalls(falls, cell, levelM[cell] ?? 0, exitLevels(edge, east, north))
  }
  return falls
}

/** Fall from a cell's centre to the boundary below it, and rise to the one above it [m]. */
interface Exits {
  readonly dropM: number | undefined
  readonly riseM: number | undefined
}

function exitLevels(edge: EdgeCell, east: number, north: number): Exits {
  const steepness = Math.hypot(east, north)
  if (steepness < LEVEL_GRADIENT) return { dropM: undefined, riseM: undefined }
  const up = { eastM: east / steepness, northM: north / steepness }
  const downM = exitM(edge, { eastM: -up.eastM, northM: -up.northM })
  const upM = exitM(edge, up)
  return { dropM: downM && downM * steepness, riseM: upM && upM * steepness }
}

function enterFalls(falls: EdgeFalls, cell: number, levelM: number, { dropM, riseM }: Exits): void {
  if (dropM !== undefined) {
    falls.leaves[cell] = 1
    falls.footM[cell] = levelM - dropM
  }
  if (riseM !== undefined) {
    falls.begins[cell] = 1
    falls.topM[cell] = levelM + riseM
  }
}

/** A side of the boundary: a corner and the unit direction out of the plot. */
interface Side {
  readonly corner: PlanPoint
  readonly outEast: number
  readonly outNorth: number
}

interface EdgeCell {
  readonly frame: GridFrame
  readonly hood: Neighbourhood
  readonly sides: readonly Side[]
  readonly centre: PlanPoint
}

// Plan distance along a direction to the boundary; negative when the centre lies just beyond it.
function exitM(edge: EdgeCell, way: PlanPoint): number | undefined {
  const { centre, frame } = edge
  let nearestM: number | undefined
  for (const side of edge.sides) {
    const outward = way.eastM * side.outEast + way.northM * side.outNorth
    if (outward < CROSSES_SIDE) continue
    const gapM =
      (side.corner.eastM - centre.eastM) * side.outEast + (side.corner.northM - centre.northM) * side.outNorth
    const alongM = gapM / outward
    if (Math.abs(alongM) > (NEAR_CELLS * frame.cellM) / CROSSES_SIDE) continue
    nearestM = Math.min(nearestM ?? Infinity, alongM)
  }
  if (nearestM !== undefined || edge.sides.length > 0) return nearestM
  return stepsOut(edge, way) ? frame.cellM / 2 : undefined
}

// Beside a gap in the survey there is no drawn side: look one cell ahead.
function stepsOut({ frame, hood, centre }: EdgeCell, way: PlanPoint): boolean {
  const ahead = cellAt(frame, {
    eastM: centre.eastM + way.eastM * frame.cellM,
    northM: centre.northM + way.northM * frame.cellM,
  })
  return ahead === undefined || !hood.inside[ahead]
}

// For each cell the sides of the boundary within about a cell of it, found by walking along every side.
function sidesNear(surface: Surface): Map<number, Side[]> {
  const { frame, boundary } = surface
  const turn = signedAreaM2(boundary) < 0 ? -1 : 1
  const near = new Map<number, Side[]>()
  for (const [from, to] of sides(boundary)) {
    const lengthM = Math.hypot(to.eastM - from.eastM, to.northM - from.northM)
    if (lengthM === 0) continue
    const side = {
      corner: from,
      outEast: (turn * (to.northM - from.northM)) / lengthM,
      outNorth: (-turn * (to.eastM - from.eastM)) / lengthM,
    }
    const steps = Math.ceil(lengthM / frame.cellM)
    for (let step = 0; step <= steps; step++) enter(near, frame, { side, from, to }, step / steps)
  }
  return near
}

/** A side with its ends. */
interface Stretch {
  readonly side: Side
  readonly from: PlanPoint
  readonly to: PlanPoint
}

// Gives the side to the cells around one place of it that lie near enough to it.
function enter(near: Map<number, Side[]>, frame: GridFrame, { side, from, to }: Stretch, part: number): void {
  const { cellM } = frame
  const at = {
    eastM: from.eastM + part * (to.eastM - from.eastM),
    northM: from.northM + part * (to.northM - from.northM),
  }
  for (let down = -1; down <= 1; down++)
    for (let east = -1; east <= 1; east++) {
      const cell = cellAt(frame, { eastM: at.eastM + east * cellM, northM: at.northM - down * cellM })
      if (cell === undefined) continue
      const held = near.get(cell)
      if (held && held[held.length - 1] === side) continue
      if (distanceToSegmentM(cellCentre(frame, cell), from, to) > NEAR_CELLS * cellM) continue
      if (held) held.push(side)
      else near.set(cell, [side])
    }
}
