import { cellCentre, type GridFrame } from '#core/geometry'
import { slopeAreaFactor, toRadians, toDegrees, wholeCircleDeg } from '#core/units'
import { LEVEL_GRADIENT } from './limits'
import { risingCells } from './rising-cells'

/** The cells of one zone and the ground under them. */
export interface ZoneGround {
  readonly frame: GridFrame
  readonly cells: readonly number[]
  /** Part of each cell of the frame inside the plot, 0 to 1. */
  readonly share: Float64Array
  readonly slopeDeg: Float64Array
  readonly aspectDeg: Float64Array
}

/** Areas and steepness of one zone. */
export interface ZoneSlope {
  readonly planAreaM2: number
  readonly slopeAreaM2: number
  readonly slopeDegMean: number
  readonly slopeDegSteep: number
  readonly aspectDeg: number | undefined
  /** Length down the slope, as most of its ground has it [m plan]. */
  readonly lengthM: number
}

/** Share of a zone that is no steeper than its steep figure. */
const STEEP_SHARE = 0.9

/**
 * Measures the areas, steepness, direction and length of a zone. Areas count the part of each cell inside the plot.
 *
 * @param ground - the zone's cells and the ground under them
 * @returns areas [m²], slopes and direction [°], length down the slope [m plan]
 */
export function zoneSlope(ground: ZoneGround): ZoneSlope {
  const { frame } = ground
  const cellM2 = frame.cellM * frame.cellM
  const { inside, sloping, degrees } = sumsOf(ground)
  const aspectDeg = facing(ground, inside)
  return {
    planAreaM2: inside * cellM2,
    slopeAreaM2: cellM2 * sloping,
    slopeDegMean: degrees / inside,
    slopeDegSteep: steepDeg(ground, inside),
    aspectDeg,
    lengthM: aspectDeg === undefined ? Math.sqrt(inside * cellM2) : lengthDown(ground, aspectDeg),
  }
}

// Shares of the zone's cells added up: as they are, as slope area, and times their steepness.
function sumsOf({ cells, share, slopeDeg }: ZoneGround) {
  let inside = 0
  let sloping = 0
  let degrees = 0
  for (const cell of cells) {
    const part = share[cell]!
    const steepness = slopeDeg[cell]!
    inside += part
    sloping += part * slopeAreaFactor(steepness)
    degrees += part * steepness
  }
  return { inside, sloping, degrees }
}

// The slope that nine tenths of the zone do not exceed [°].
function steepDeg({ cells, share, slopeDeg }: ZoneGround, inside: number): number {
  const ordered = risingCells(cells, slopeDeg)
  let passed = 0
  for (const cell of ordered) {
    passed += share[cell] ?? 0
    if (passed >= STEEP_SHARE * inside) return slopeDeg[cell] ?? 0
  }
  return slopeDeg[ordered.at(-1) ?? 0] ?? 0
}

// Direction of the mean gradient; undefined where the ground as a whole is level.
function facing({ cells, share, slopeDeg, aspectDeg }: ZoneGround, inside: number): number | undefined {
  let east = 0
  let north = 0
  for (const cell of cells) {
    const bearing = aspectDeg[cell] ?? -1
    if (bearing < 0) continue
    const gradient = (share[cell] ?? 0) * Math.tan(toRadians(slopeDeg[cell] ?? 0))
    east += gradient * Math.sin(toRadians(bearing))
    north += gradient * Math.cos(toRadians(bearing))
  }
  return Math.hypot(east, north) / inside < LEVEL_GRADIENT
    ? undefined
    : wholeCircleDeg(toDegrees(Math.atan2(east, north)))
}

/** Width of the strips in which the length is measured [cells]. */
const STRIP_CELLS = 2

// Mean length of strips down the slope, each weighted by its own length: the length that most of the ground has.
function lengthDown({ frame, cells, share }: ZoneGround, aspectDeg: number): number {
  const stripM = STRIP_CELLS * frame.cellM
  const [acrossEast, acrossNorth] = [Math.cos(toRadians(aspectDeg)), -Math.sin(toRadians(aspectDeg))]
  const strips = new Map<number, number>()
  for (const cell of cells) {
    const { eastM, northM } = cellCentre(frame, cell)
    const strip = Math.floor((eastM * acrossEast + northM * acrossNorth) / stripM)
    const lengthM = ((share[cell] ?? 0) * frame.cellM * frame.cellM) / stripM
    strips.set(strip, (strips.get(strip) ?? 0) + lengthM)
  }
  const lengths = [...strips.values()]
  const squares = lengths.reduce((sum, lengthM) => sum + lengthM * lengthM, 0)
  return squares / lengths.reduce((sum, lengthM) => sum + lengthM, 0)
}
