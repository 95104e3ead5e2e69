import type { GridFrame, PlanPoint } from '#core/geometry'
import { toDegrees, toRadians } from '#core/units'
import type { ShadingGround } from './shade.types'

/** A place in cells from the centre of the grid's north-west cell, rows southward. */
interface GridPlace {
  readonly column: number
  readonly row: number
}

/** A place nearer than this to a row or column counts as on it [cells]. */
const ON_A_CELL = 1e-9

/**
 * Level of the ground at a place: by nearness between the centres of the up to four cells around that are in the plot.
 *
 * @param ground - the grid of levels
 * @param at - the place in plan [m], on a cell of the plot
 * @returns level [m]
 */
export function placeLevelM(ground: ShadingGround, at: PlanPoint): number {
  const { column, row } = gridPlace(ground.frame, at)
  const [west, north] = [Math.floor(column), Math.floor(row)]
  const [right, down] = [column - west, row - north]
  let [sum, weights] = [0, 0]
  const add = (weight: number, cell: number | undefined) => {
    if (weight === 0 || cell === undefined) return
    sum += weight * ground.levelM[cell]!
    weights += weight
  }
  add((1 - right) * (1 - down), plotCell(ground, west, north))
  add(right * (1 - down), plotCell(ground, west + 1, north))
  add((1 - right) * down, plotCell(ground, west, north + 1))
  add(right * down, plotCell(ground, west + 1, north + 1))
  return sum / weights
}

/**
 * Height of the plot's own ground in one direction: a walk over the grid that stops at every line of cell centres and reads
 * the ground between the two cells beside it, as the sweeps over the whole grid do.
 *
 * @param ground - the grid; only ground inside the plot counts
 * @param at - the place in plan [m]
 * @param levelM - level looked from [m]
 * @param azimuthDeg - direction looked towards, clockwise from true north [°]
 * @returns angle of the highest ground above the horizontal [°], 0 where all is lower
 */
export function placeGroundDeg(
  ground: ShadingGround,
  at: PlanPoint,
  levelM: number,
  azimuthDeg: number,
): number {
  const { frame } = ground
  const east = Math.sin(toRadians(azimuthDeg))
  const south = -Math.cos(toRadians(azimuthDeg))
  const byColumns = Math.abs(east) >= Math.abs(south)
  const { column, row } = gridPlace(frame, at)
  const [along, across] = byColumns ? [column, row] : [row, column]
  const towards = byColumns ? east : south
  const drift = (byColumns ? south : east) / Math.abs(towards)
  const stepM = frame.cellM / Math.abs(towards)
  const count = byColumns ? frame.columns : frame.rows
  const sign = Math.sign(towards)
  let highest = 0
  for (let line = nextLine(along, sign); line >= 0 && line < count; line += sign) {
    const away = Math.abs(line - along)
    const level = levelBetween(ground, byColumns, line, snapped(across + away * drift))
    if (level !== undefined) highest = Math.max(highest, (level - levelM) / (away * stepM))
  }
  return toDegrees(Math.atan(highest))
}

function gridPlace(frame: GridFrame, at: PlanPoint): GridPlace {
  return {
    column: snapped((at.eastM - frame.westM) / frame.cellM - 0.5),
    row: snapped(frame.rows - 0.5 - (at.northM - frame.southM) / frame.cellM),
  }
}

function snapped(value: number): number {
  const nearest = Math.round(value)
  return Math.abs(value - nearest) < ON_A_CELL ? nearest : value
}

function nextLine(along: number, sign: number): number {
  return sign > 0 ? Math.floor(along) + 1 : Math.ceil(along) - 1
}

// Level on a line of cell centres, between the two cells beside the place; undefined where either is not in the plot.
function levelBetween(
  ground: ShadingGround,
  byColumns: boolean,
  line: number,
  across: number,
): number | undefined {
  const before = Math.floor(across)
  const part = across - before
  const one = byColumns ? plotCell(ground, line, before) : plotCell(ground, before, line)
  if (one === undefined) return undefined
  if (part === 0) return ground.levelM[one]!
  const other = byColumns ? plotCell(ground, line, before + 1) : plotCell(ground, before + 1, line)
  if (other === undefined) return undefined
  return ground.levelM[one]! + part * (ground.levelM[other]! - ground.levelM[one]!)
}

function plotCell({ frame, share }: ShadingGround, column: number, row: number): number | undefined {
  if (column < 0 || row < 0 || column >= frame.columns || row >= frame.rows) return undefined
  const cell = row * frame.columns + column
  return share[cell]! > 0 ? cell : undefined
}
