import { cellCentre, type PlanPoint } from '#core/geometry'
import { toDegrees, toRadians, wholeCircleDeg } from '#core/units'
import type { ShadingGround, TiltedCells } from './shade.types'

/** Which zone each cell is in. */
export interface ZonedCells {
  /** Zone of each cell, -1 outside. */
  readonly zoneOfCell: Int16Array
  /** Number of zones. */
  readonly count: number
}

/**
 * Plan area of each zone, in cells.
 *
 * @param zones - zone of each cell
 * @param share - part of each cell inside the plot [1]
 * @returns sum of the parts, one to a zone [cells]
 * @throws RangeError when the grids differ in size or a zone has no cell inside the plot
 */
export function zoneWeights(zones: ZonedCells, share: Float64Array): Float64Array {
  const { zoneOfCell, count } = zones
  if (zoneOfCell.length !== share.length)
    throw new RangeError(`zoneSun: zones must have ${share.length} cells, got ${zoneOfCell.length}`)
  const weights = new Float64Array(count)
  for (let cell = 0; cell < share.length; cell += 1)
    if (zoneOfCell[cell]! >= 0) weights[zoneOfCell[cell]!]! += share[cell]!
  weights.forEach((weight, zone) => {
    if (!(weight > 0)) throw new RangeError(`zoneSun: zone ${zone} has no cell inside the plot`)
  })
  return weights
}

/**
 * Means of a figure over each zone by plan area.
 *
 * @param zones - zone of each cell
 * @param share - part of each cell inside the plot [1]
 * @param weights - plan area of each zone [cells]
 * @param values - the figure, one for each cell [its own unit]
 * @returns one mean to a zone, in the figure's unit
 */
export function meansOfZones(
  zones: ZonedCells,
  share: Float64Array,
  weights: Float64Array,
  values: Float32Array,
): Float64Array {
  const { zoneOfCell, count } = zones
  const means = new Float64Array(count)
  for (let cell = 0; cell < zoneOfCell.length; cell += 1) {
    const zone = zoneOfCell[cell]!
    if (zone >= 0) means[zone]! += share[cell]! * values[cell]!
  }
  for (let zone = 0; zone < count; zone += 1) means[zone]! /= weights[zone]!
  return means
}

/**
 * The plane that each zone lies on as a whole: that of its mean gradient by plan area.
 *
 * @param zones - zone of each cell
 * @param share - part of each cell inside the plot [1]
 * @param cells - slope and aspect of each cell
 * @param weights - plan area of each zone [cells]
 * @returns steepness [°] and aspect [°], -1 where level, one plane to a zone
 */
export function planesOfZones(
  zones: ZonedCells,
  share: Float64Array,
  cells: TiltedCells,
  weights: Float64Array,
): readonly { readonly slopeDeg: number; readonly aspectDeg: number }[] {
  const { zoneOfCell, count } = zones
  const east = new Float64Array(count)
  const north = new Float64Array(count)
  for (let cell = 0; cell < zoneOfCell.length; cell += 1) {
    const zone = zoneOfCell[cell]!
    const slopeDeg = cells.slopeDeg[cell]!
    if (zone < 0 || !(share[cell]! > 0) || slopeDeg === 0) continue
    const gradient = share[cell]! * Math.tan(toRadians(slopeDeg))
    const aspect = toRadians(cells.aspectDeg[cell]!)
    east[zone]! += gradient * Math.sin(aspect)
    north[zone]! += gradient * Math.cos(aspect)
  }
  return Array.from(east, (eastward, zone) => {
    const northward = north[zone]!
    const gradient = Math.hypot(eastward, northward) / weights[zone]!
    if (gradient === 0) return { slopeDeg: 0, aspectDeg: -1 }
    return {
      slopeDeg: toDegrees(Math.atan(gradient)),
      aspectDeg: wholeCircleDeg(toDegrees(Math.atan2(eastward, northward))),
    }
  })
}

/**
 * The cell of each zone that lies nearest to the zone's middle.
 *
 * @param zones - zone of each cell
 * @param ground - where the cells lie
 * @param weights - plan area of each zone [cells]
 * @returns centre of that cell in plan [m], one to a zone
 */
export function middlesOfZones(
  zones: ZonedCells,
  ground: ShadingGround,
  weights: Float64Array,
): readonly PlanPoint[] {
  const { zoneOfCell, count } = zones
  const { frame, share } = ground
  const column = new Float64Array(count)
  const row = new Float64Array(count)
  const nearest = new Int32Array(count).fill(-1)
  const least = new Float64Array(count).fill(Infinity)
  const eachCell = (visit: (zone: number, cell: number, at: { column: number; row: number }) => void) => {
    for (let cell = 0; cell < zoneOfCell.length; cell += 1)
      if (zoneOfCell[cell]! >= 0 && share[cell]! > 0)
        visit(zoneOfCell[cell]!, cell, {
          column: cell % frame.columns,
          row: Math.floor(cell / frame.columns),
        })
  }
  eachCell((zone, cell, at) => {
    column[zone]! += (share[cell]! * at.column) / weights[zone]!
    row[zone]! += (share[cell]! * at.row) / weights[zone]!
  })
  eachCell((zone, cell, at) => {
    const away = (at.column - column[zone]!) ** 2 + (at.row - row[zone]!) ** 2
    if (away >= least[zone]!) return
    least[zone] = away
    nearest[zone] = cell
  })
  return Array.from(nearest, (cell) => cellCentre(frame, cell))
}
