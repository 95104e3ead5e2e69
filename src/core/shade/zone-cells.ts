import { cellCentre, type GridFrame, type PlanPoint } from '#core/geometry'
import { toDegrees, toRadians, wholeCircleDeg } from '#core/units'
import type { TiltedCells } from './shade.types'

/** Which zone each cell is in. */
export interface ZonedCells {
  /** Zone of each cell, -1 outside. */
  readonly zoneOfCell: Int16Array
  /** Number of zones. */
  readonly count: number
}

/**
 * Part that each cell is of its zone's plan area.
 *
 * @param zones - zone of each cell
 * @param share - part of each cell inside the plot [1]
 * @returns one part per cell [1], adding up to 1 in each zone; 0 outside the zones
 * @throws RangeError when the grids differ in size or a zone has no cell inside the plot
 */
export function zoneParts(zones: ZonedCells, share: Float64Array): Float64Array {
  const weights = zoneWeights(zones, share)
  return share.map((part, cell) => {
    const zone = zones.zoneOfCell[cell]!
    return zone < 0 ? 0 : part / weights[zone]!
  })
}

/**
 * Means of a figure over each zone by plan area.
 *
 * @param zones - zone of each cell
 * @param parts - part that each cell is of its zone [1]
 * @param values - the figure, one for each cell [its own unit]
 * @returns one mean to a zone, in the figure's unit
 */
export function meansOfZones(
  zones: ZonedCells,
  parts: Float64Array,
  values: (cell: number) => number,
): Float64Array {
  const { zoneOfCell, count } = zones
  const means = new Float64Array(count)
  for (let cell = 0; cell < parts.length; cell += 1)
    if (parts[cell]! > 0) means[zoneOfCell[cell]!]! += parts[cell]! * values(cell)
  return means
}

/**
 * The plane that each zone lies on as a whole: that of its mean gradient by plan area.
 *
 * @param zones - zone of each cell
 * @param parts - part that each cell is of its zone [1]
 * @param cells - slope and aspect of each cell
 * @returns steepness [°] and aspect [°], -1 where level, one plane to a zone
 */
export function planesOfZones(
  zones: ZonedCells,
  parts: Float64Array,
  cells: TiltedCells,
): readonly { readonly slopeDeg: number; readonly aspectDeg: number }[] {
  const gradient = (towards: (bearingRad: number) => number) => (cell: number) =>
    Math.tan(toRadians(cells.slopeDeg[cell]!)) * towards(toRadians(cells.aspectDeg[cell]!))
  const east = meansOfZones(zones, parts, gradient(Math.sin))
  const north = meansOfZones(zones, parts, gradient(Math.cos))
  return Array.from(east, (eastward, zone) => {
    const northward = north[zone]!
    const steepness = Math.hypot(eastward, northward)
    if (steepness === 0) return { slopeDeg: 0, aspectDeg: -1 }
    return {
      slopeDeg: toDegrees(Math.atan(steepness)),
      aspectDeg: wholeCircleDeg(toDegrees(Math.atan2(eastward, northward))),
    }
  })
}

/**
 * The cell of each zone that lies nearest to the zone's middle.
 *
 * @param zones - zone of each cell
 * @param parts - part that each cell is of its zone [1]
 * @param frame - where the cells lie
 * @returns centre of that cell in plan [m], one to a zone
 */
export function middlesOfZones(
  zones: ZonedCells,
  parts: Float64Array,
  frame: GridFrame,
): readonly PlanPoint[] {
  const { zoneOfCell, count } = zones
  const columnOf = (cell: number) => cell % frame.columns
  const rowOf = (cell: number) => Math.floor(cell / frame.columns)
  const column = meansOfZones(zones, parts, columnOf)
  const row = meansOfZones(zones, parts, rowOf)
  const nearest = new Int32Array(count)
  const least = new Float64Array(count).fill(Infinity)
  for (let cell = 0; cell < parts.length; cell += 1) {
    const zone = zoneOfCell[cell]!
    if (!(parts[cell]! > 0)) continue
    const away = (columnOf(cell) - column[zone]!) ** 2 + (rowOf(cell) - row[zone]!) ** 2
    if (away >= least[zone]!) continue
    least[zone] = away
    nearest[zone] = cell
  }
  return Array.from(nearest, (cell) => cellCentre(frame, cell))
}

// Plan area of each zone [cells].
function zoneWeights({ zoneOfCell, count }: ZonedCells, share: Float64Array): Float64Array {
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
