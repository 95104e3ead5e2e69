import type { PlanPoint } from '#core/geometry'
import type { Surface } from '#core/survey'

/** A straight line of sight from an eye to the ground at a place. */
export interface Sight {
  readonly eye: PlanPoint
  readonly eyeLevelM: number
  readonly to: PlanPoint
  readonly toLevelM: number
}

/**
 * How far the ground between an eye and a place stands above the line of sight, where it stands highest.
 *
 * The ground is read wherever the line crosses a row or a column of cell centres, straight between the two centres
 * there; where one of them is off the plot it is not known and left out.
 *
 * @param surface - the ground
 * @param sight - the line of sight
 * @param cell - index of the cell looked at [count]
 * @returns height above the line [m], negative when all lies below it; stops at the first ground above the line
 */
export function highestOnSightLine(surface: Surface, sight: Sight, cell: number): number {
  const { frame } = surface
  const column = cell % frame.columns
  const ray: Ray = {
    east: (sight.eye.eastM - frame.westM) / frame.cellM - 0.5,
    south: frame.rows - 0.5 - (sight.eye.northM - frame.southM) / frame.cellM,
    column,
    row: (cell - column) / frame.columns,
    eyeLevelM: sight.eyeLevelM,
    riseM: sight.toLevelM - sight.eyeLevelM,
  }
  const acrossM = overColumns(surface, ray)
  return acrossM > 0 ? acrossM : Math.max(acrossM, overRows(surface, ray))
}

/** A line of sight in cells: from the eye, to the middle of a cell. */
interface Ray {
  readonly east: number
  readonly south: number
  readonly column: number
  readonly row: number
  readonly eyeLevelM: number
  readonly riseM: number
}

function overColumns({ frame, share, levelM }: Surface, ray: Ray): number {
  const { columns, rows } = frame
  const [wide, tall] = [ray.column - ray.east, ray.row - ray.south]
  const way = Math.sign(wide)
  let mostM = -Infinity
  for (let x = firstBeyond(ray.east, way); way !== 0 && (ray.column - x) * way > 0; x += way) {
    if (x < 0 || x >= columns) continue
    const part = (x - ray.east) / wide
    const y = ray.south + part * tall
    const above = Math.floor(y)
    const groundM = between(levelM, share, {
      first: above * columns + x,
      step: columns,
      part: y - above,
      least: above,
      most: rows,
    })
    mostM = Math.max(mostM, groundM - ray.eyeLevelM - part * ray.riseM)
    if (mostM > 0) return mostM
  }
  return mostM
}

function overRows({ frame, share, levelM }: Surface, ray: Ray): number {
  const { columns, rows } = frame
  const [wide, tall] = [ray.column - ray.east, ray.row - ray.south]
  const way = Math.sign(tall)
  let mostM = -Infinity
  for (let y = firstBeyond(ray.south, way); way !== 0 && (ray.row - y) * way > 0; y += way) {
    if (y < 0 || y >= rows) continue
    const part = (y - ray.south) / tall
    const x = ray.east + part * wide
    const left = Math.floor(x)
    const groundM = between(levelM, share, {
      first: y * columns + left,
      step: 1,
      part: x - left,
      least: left,
      most: columns,
    })
    mostM = Math.max(mostM, groundM - ray.eyeLevelM - part * ray.riseM)
    if (mostM > 0) return mostM
  }
  return mostM
}

// The first whole number strictly beyond a place, going one way.
const firstBeyond = (from: number, way: number): number =>
  way > 0 ? Math.floor(from) + 1 : Math.ceil(from) - 1

/** Two neighbouring centres, the share of the way from the first to the second, and the place of the first in its line. */
interface Pair {
  readonly first: number
  readonly step: number
  readonly part: number
  readonly least: number
  readonly most: number
}

// Level between two centres; as low as can be where one that counts is not known.
function between(
  levelM: Float64Array,
  share: Float64Array,
  { first, step, part, least, most }: Pair,
): number {
  if (least < 0 || least >= most || !(share[first]! > 0)) return -Infinity
  if (part === 0) return levelM[first]!
  if (least + 1 >= most || !(share[first + step]! > 0)) return -Infinity
  return levelM[first]! * (1 - part) + levelM[first + step]! * part
}
