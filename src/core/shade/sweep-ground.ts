import { toRadians } from '#core/units'
import type { SweptGround } from './swept-ground'

/** Ground met along one line; places count from the end that lies towards the asked direction. */
export interface SweptLine {
  /** Level of the ground at each place [m]; NaN where there is none. */
  readonly levelM: Float64Array
  /** What the visitor finds for each place; -Infinity or NaN where there is nothing to say. */
  readonly found: Float64Array
  /** First place of the line that may have ground, and the one after its last [count]. */
  from: number
  to: number
  /** Distance between neighbouring places [m]. */
  readonly stepM: number
}

/** How findings come back to the cells. */
export interface Brought {
  /** What a cell gets that no finding reaches. */
  readonly nothing: number
  /** Whether findings are levels, which go up and down with the ground where a cell has one line beside it only. */
  readonly areLevels: boolean
}

/** A part of a cell nearer than this to a row or column counts as on it [cells]. */
const ON_A_CELL = 1e-9

/** How lines run: one cell at a time along the grid axis nearer to their direction, sideways by a fixed part of a cell. */
interface Run {
  readonly levelM: Float64Array
  readonly alongCount: number
  readonly acrossCount: number
  /** Steps from cell to cell in what is swept out, along and across [cells]. */
  readonly outAlong: number
  readonly outAcross: number
  /** Place of the first cell along, and the step of places from cell to cell: 1 or -1. */
  readonly firstPlace: number
  readonly placeStep: number
  /** Whole cells across, and the part left over, at each index along. */
  readonly whole: Int32Array
  readonly part: Float64Array
  readonly stepM: number
}

/**
 * Walks the whole grid in lines that run along one direction, and brings what is found on the lines back to the cells.
 * Lines lie one cell apart, so the work grows with the number of cells. Between rows the ground is read, and the finding
 * brought back, by linear interpolation; lines along the eight winds pass through cell centres and need none.
 *
 * @param ground - the grid, made ready; cells outside the plot are no ground at all
 * @param azimuthDeg - direction looked towards, clockwise from true north [°]
 * @param visit - fills `found` from `levelM` for one line
 * @param brought - how findings come back to the cells
 * @returns one value per cell
 */
export function sweepGround(
  ground: SweptGround,
  azimuthDeg: number,
  visit: (line: SweptLine) => void,
  brought: Brought,
): Float32Array {
  const run = runTowards(ground, azimuthDeg)
  const out = new Float32Array(ground.frame.columns * ground.frame.rows).fill(brought.nothing)
  let line = emptyLine(run)
  let before = emptyLine(run)
  const ends = [run.whole[0]!, run.whole[run.alongCount - 1]!]
  const last = run.acrossCount - 1 - Math.min(...ends)
  for (let start = -Math.max(...ends); start <= last; start += 1) {
    const [first, beyond] = reach(run, start)
    gather(run, start, { line, first, beyond })
    visit(line)
    bringBack(run, start, { line, before, first, beyond, areLevels: brought.areLevels }, out)
    ;[line, before] = [before, line]
  }
  return out
}

function runTowards({ frame, byRow, byColumn }: SweptGround, azimuthDeg: number): Run {
  const east = Math.sin(toRadians(azimuthDeg))
  const south = -Math.cos(toRadians(azimuthDeg))
  const byColumns = Math.abs(east) >= Math.abs(south)
  const alongCount = byColumns ? frame.columns : frame.rows
  const fromLast = (byColumns ? east : south) > 0
  const firstPlace = fromLast ? alongCount - 1 : 0
  return {
    levelM: byColumns ? byRow : byColumn,
    alongCount,
    acrossCount: byColumns ? frame.rows : frame.columns,
    outAlong: byColumns ? 1 : frame.columns,
    outAcross: byColumns ? frame.columns : 1,
    firstPlace,
    placeStep: fromLast ? -1 : 1,
    ...drifting(alongCount, byColumns ? south / east : east / south, firstPlace),
    stepM: frame.cellM / Math.max(Math.abs(east), Math.abs(south)),
  }
}

// Lines pass through cell centres at the end that is looked towards, so that a plot turned by a quarter has the same ones.
function drifting(alongCount: number, drift: number, anchor: number): Pick<Run, 'whole' | 'part'> {
  const perCell = snapped(drift)
  const whole = new Int32Array(alongCount)
  const part = new Float64Array(alongCount)
  for (let along = 0; along < alongCount; along += 1) {
    const across = snapped((along - anchor) * perCell)
    whole[along] = Math.floor(across)
    part[along] = across - Math.floor(across)
  }
  return { whole, part }
}

function snapped(value: number): number {
  const nearest = Math.round(value)
  return Math.abs(value - nearest) < ON_A_CELL ? nearest : value
}

function emptyLine({ alongCount, stepM }: Run): SweptLine {
  const found = new Float64Array(alongCount).fill(NaN)
  return { levelM: new Float64Array(alongCount), found, from: 0, to: 0, stepM }
}

// The stretch along in which a line crosses the grid; lines drift one way only.
function reach({ whole, alongCount, acrossCount }: Run, start: number): readonly [number, number] {
  const rising = whole[alongCount - 1]! >= whole[0]!
  const inside = (along: number) => start + whole[along]! >= 0
  const beyond = (along: number) => start + whole[along]! >= acrossCount
  return rising
    ? [firstWhere(alongCount, inside), firstWhere(alongCount, beyond)]
    : [firstWhere(alongCount, (along) => !beyond(along)), firstWhere(alongCount, (along) => !inside(along))]
}

// The first index at which a test that once true stays true is true; the count when it never is.
function firstWhere(count: number, isTrue: (at: number) => boolean): number {
  let [low, high] = [0, count]
  while (low < high) {
    const middle = (low + high) >> 1
    if (isTrue(middle)) high = middle
    else low = middle + 1
  }
  return low
}

interface Gathering {
  readonly line: SweptLine
  readonly first: number
  readonly beyond: number
}

function gather(run: Run, start: number, { line, first, beyond }: Gathering): void {
  const { levelM, alongCount, firstPlace, placeStep, whole, part } = run
  line.found.fill(NaN)
  const into = line.levelM
  for (let along = first; along < beyond; along += 1) {
    const cell = along + (start + whole[along]!) * alongCount
    const here = levelM[cell]!
    const share = part[along]!
    into[firstPlace + placeStep * along] =
      share === 0 ? here : here + share * (levelM[cell + alongCount]! - here)
  }
  line.from = placeStep > 0 ? first : firstPlace - beyond + 1
  line.to = placeStep > 0 ? beyond : firstPlace - first + 1
}

interface Bringing {
  readonly line: SweptLine
  /** The line before this one. */
  readonly before: SweptLine
  readonly first: number
  readonly beyond: number
  readonly areLevels: boolean
}

// Every cell lies between its own line and the one before; at the border of the plot only one of them may have a finding.
function bringBack(run: Run, start: number, from: Bringing, out: Float32Array): void {
  const { outAlong, outAcross, firstPlace, placeStep, whole, part } = run
  const { line, before, first, beyond } = from
  for (let along = first; along < beyond; along += 1) {
    const place = firstPlace + placeStep * along
    const share = part[along]!
    const own = line.found[place]!
    const other = share > 0 ? before.found[place]! : own
    const cell = along * outAlong + (start + whole[along]!) * outAcross
    if (own > -Infinity && other > -Infinity) out[cell] = own + share * (other - own)
    else if (own > -Infinity) out[cell] = own + aside(run, start, along, from.areLevels ? line : undefined)
    else if (other > -Infinity)
      out[cell] = other + aside(run, start, along, from.areLevels ? before : undefined)
  }
}

// How much higher a cell lies than the place of a line beside it [m].
function aside(run: Run, start: number, along: number, line: SweptLine | undefined): number {
  if (line === undefined) return 0
  const { levelM, alongCount, firstPlace, placeStep, whole } = run
  return levelM[along + (start + whole[along]!) * alongCount]! - line.levelM[firstPlace + placeStep * along]!
}
