import { toRadians } from '#core/units'
import type { ShadingGround } from './shade.types'

/** Ground met along one line, the end that lies towards the asked direction first. */
export interface SweptLine {
  /** How many samples the line has. */
  count: number
  /** Place of each sample along the line, in steps of `stepM` from the line's first end. */
  readonly at: Float64Array
  /** Level of the ground at each sample [m]. */
  readonly levelM: Float64Array
  /** What the visitor finds for each sample; -Infinity where there is nothing to say. */
  readonly found: Float64Array
  /** Distance between neighbouring places [m]. */
  readonly stepM: number
}

/** A part of a cell nearer than this to a row or column counts as on it [cells]. */
const ON_A_CELL = 1e-9

/** How lines run: one cell at a time along the grid axis nearer to their direction, sideways by a fixed part of a cell. */
interface Run {
  readonly alongCount: number
  readonly acrossCount: number
  readonly alongStride: number
  readonly acrossStride: number
  /** Whether the end towards the direction has the highest index. */
  readonly fromLast: boolean
  /** Whole cells across, and the part left over, at each index along. */
  readonly whole: Int32Array
  readonly part: Float64Array
}

/**
 * Walks the whole grid in lines that run along one direction, and brings what is found on the lines back to the cells.
 * Lines lie one cell apart, so the work grows with the number of cells. Between rows the ground is read, and the finding
 * brought back, by linear interpolation; lines along the eight winds pass through cell centres and need none.
 *
 * @param ground - the grid; cells outside the plot are no ground at all
 * @param azimuthDeg - direction looked towards, clockwise from true north [°]
 * @param visit - fills `found` from `levelM` for one line
 * @param nothing - what a cell gets that no finding reaches [any]
 * @returns one value per cell
 */
export function sweepGround(
  ground: ShadingGround,
  azimuthDeg: number,
  visit: (line: SweptLine) => void,
  nothing: number,
): Float32Array {
  const run = runTowards(ground, azimuthDeg)
  const line = emptyLine(run, ground.frame.cellM, azimuthDeg)
  const cells = new Int32Array(run.alongCount)
  const parts = new Float64Array(run.alongCount)
  const sums = new Float32Array(ground.levelM.length)
  const weights = new Float32Array(ground.levelM.length)
  const ends = [run.whole[0]!, run.whole[run.alongCount - 1]!]
  const first = -Math.max(...ends) - 1
  const last = run.acrossCount - Math.min(...ends)
  for (let start = first; start <= last; start += 1) {
    gather(ground, run, start, { line, cells, parts })
    if (line.count === 0) continue
    visit(line)
    scatter(run, { line, cells, parts }, sums, weights)
  }
  for (let cell = 0; cell < sums.length; cell += 1)
    sums[cell] = weights[cell]! > 0 ? sums[cell]! / weights[cell]! : nothing
  return sums
}

interface Gathered {
  readonly line: SweptLine
  /** Index of the cell at or just before each sample, and how far the sample lies beyond it [cells]. */
  readonly cells: Int32Array
  readonly parts: Float64Array
}

function runTowards({ frame }: ShadingGround, azimuthDeg: number): Run {
  const east = Math.sin(toRadians(azimuthDeg))
  const south = -Math.cos(toRadians(azimuthDeg))
  const byColumns = Math.abs(east) >= Math.abs(south)
  const drift = snapped(byColumns ? south / east : east / south)
  const alongCount = byColumns ? frame.columns : frame.rows
  const whole = new Int32Array(alongCount)
  const part = new Float64Array(alongCount)
  for (let along = 0; along < alongCount; along += 1) {
    const across = snapped(along * drift)
    whole[along] = Math.floor(across)
    part[along] = across - Math.floor(across)
  }
  return {
    alongCount,
    acrossCount: byColumns ? frame.rows : frame.columns,
    alongStride: byColumns ? 1 : frame.columns,
    acrossStride: byColumns ? frame.columns : 1,
    fromLast: (byColumns ? east : south) > 0,
    whole,
    part,
  }
}

function snapped(value: number): number {
  const nearest = Math.round(value)
  return Math.abs(value - nearest) < ON_A_CELL ? nearest : value
}

function emptyLine(run: Run, cellM: number, azimuthDeg: number): SweptLine {
  const east = Math.abs(Math.sin(toRadians(azimuthDeg)))
  const north = Math.abs(Math.cos(toRadians(azimuthDeg)))
  return {
    count: 0,
    at: new Float64Array(run.alongCount),
    levelM: new Float64Array(run.alongCount),
    found: new Float64Array(run.alongCount),
    stepM: cellM / Math.max(east, north),
  }
}

function gather(ground: ShadingGround, run: Run, start: number, into: Gathered): void {
  const { levelM, share } = ground
  const { alongCount, acrossCount, alongStride, acrossStride, fromLast } = run
  const { line, cells, parts } = into
  let count = 0
  for (let place = 0; place < alongCount; place += 1) {
    const along = fromLast ? alongCount - 1 - place : place
    const across = start + run.whole[along]!
    if (across < 0 || across >= acrossCount) continue
    const cell = along * alongStride + across * acrossStride
    const part = run.part[along]!
    if (!(share[cell]! > 0)) continue
    let level = levelM[cell]!
    if (part > 0) {
      if (across + 1 >= acrossCount || !(share[cell + acrossStride]! > 0)) continue
      level += part * (levelM[cell + acrossStride]! - level)
    }
    line.at[count] = place
    line.levelM[count] = level
    cells[count] = cell
    parts[count] = part
    count += 1
  }
  line.count = count
}

function scatter(run: Run, from: Gathered, sums: Float32Array, weights: Float32Array): void {
  const { line, cells, parts } = from
  for (let sample = 0; sample < line.count; sample += 1) {
    const found = line.found[sample]!
    if (found === -Infinity) continue
    const cell = cells[sample]!
    const part = parts[sample]!
    sums[cell]! += (1 - part) * found
    weights[cell]! += 1 - part
    if (part === 0) continue
    sums[cell + run.acrossStride]! += part * found
    weights[cell + run.acrossStride]! += part
  }
}
