import volcanoText from '../truth/volcano/dem.asc?raw'
import { normalDraws, type Seed } from './normal-draws'

/** Volcano heights, stretched, with two octaves of noise: so many knots a side, so high [m]. */
const octaves = [
  { knots: 21, heightM: 1 },
  { knots: 81, heightM: 0.25 },
] as const

/** numpy.random.default_rng(20260101).bit_generator.state, as numpy 2.4.6 prints it. */
const seed: Seed = {
  state: 115918277212838128983614532752648848531n,
  stream: 167898110797086647954124334990068229867n,
}

/** Side of the ground that the reference programs were timed on [m]. */
export const SPEED_SIDE_M = 1000

interface Knots {
  readonly columns: number
  readonly rows: number
  readonly values: ArrayLike<number>
}

/**
 * Levels of the ground that the reference programs were timed on, a row after the other from the north, to the
 * millimetre: 1000 cells a side are theirs, other numbers show how time grows.
 */
export function speedLevelsM(side: number): Float64Array {
  const draw = normalDraws(seed)
  const levelsM = stretched(volcano(), side)
  for (const { knots, heightM } of octaves) {
    const noise = stretched({ columns: knots, rows: knots, values: drawn(knots * knots, draw) }, side)
    noise.forEach((value, cell) => {
      levelsM[cell] = (levelsM[cell] ?? 0) + heightM * value
    })
  }
  return levelsM.map((levelM) => Number(levelM.toFixed(3)))
}

function volcano(): Knots {
  const words = volcanoText.trim().split(/\s+/)
  const value = (name: string) => Number(words[words.indexOf(name) + 1])
  const columns = value('ncols')
  const rows = value('nrows')
  return { columns, rows, values: words.slice(-columns * rows).map(Number) }
}

function drawn(count: number, draw: () => number): Float64Array {
  const values = new Float64Array(count)
  for (let at = 0; at < count; at++) values[at] = draw()
  return values
}

/** Knots spread from edge to edge over a square of cells, straight lines between them. */
function stretched({ columns, rows, values }: Knots, side: number): Float64Array {
  const cells = new Float64Array(side * side)
  const across = places(columns, side)
  for (const [row, { at: knotRow, part: south }] of places(rows, side).entries())
    for (const [column, { at: knotColumn, part: east }] of across.entries()) {
      const north = knotRow * columns + knotColumn
      const [nw, ne] = [values[north] ?? 0, values[north + 1] ?? 0]
      const [sw, se] = [values[north + columns] ?? 0, values[north + columns + 1] ?? 0]
      cells[row * side + column] =
        nw * (1 - south) * (1 - east) + ne * (1 - south) * east + sw * south * (1 - east) + se * south * east
    }
  return cells
}

function places(knots: number, side: number): readonly { readonly at: number; readonly part: number }[] {
  return Array.from({ length: side }, (_, cell) => {
    const place = (cell * (knots - 1)) / (side - 1)
    const at = Math.min(knots - 2, Math.floor(place))
    return { at, part: place - at }
  })
}
