import { cellCentre, type GridFrame } from '#core/geometry'
import type { Surface } from '#core/survey'
import { toDegrees } from '#core/units'
import { gradientOf, gradientSum, sumGradients, type Window } from './gradient-sum'
import { gradientSupportM } from './gradient-support'
import type { MeasuringErrors } from './measuring-errors'
import { unitVariance, type WeightedPlace } from './power-variogram'
import { triangleOfCells } from './triangle-of-cells'
import { triangleTable, type TriangleTable } from './triangle-table'

/** Blocks that a zone is cut into; more change little that is shown [blocks]. */
const ENOUGH_BLOCKS = 36

/** Points that are weighed against the ground one by one; beyond it neighbours are weighed together [points]. */
const MANY_POINTS = 500

/** Cells that a mean is read from; more change nothing that is shown [cells]. */
const ENOUGH_CELLS = 20_000

/**
 * A way to reckon the standard error of the mean slope of any part of a surface of triangles. The mean is one sum over
 * points, each counted once however many cells lean on it, so what the cells share is propagated and not guessed. The
 * ground's own mean is that of square blocks, each by the levels along its four sides.
 *
 * @param surface - the ground as cells, with its triangles
 * @param errors - how well the points were measured
 * @param roughnessM - standard deviation of the ground over one metre [m], 0 where it is not known
 * @returns a function from cells to a standard error [°]
 * @throws RangeError when the surface has no triangles
 * @see Journel & Huijbregts 1978, Mining Geostatistics, chapter II
 */
export function meanSlopeErrors(
  surface: Surface,
  errors: MeasuringErrors,
  roughnessM: number,
): (cells: readonly number[]) => number {
  const { tin, frame, share } = surface
  if (!tin) throw new RangeError('meanSlopeErrors: the surface must have triangles, got none')
  const window = { frame, table: triangleTable(tin), triangleOf: triangleOfCells(tin, frame), share }
  return (cells) => {
    const step = Math.max(1, Math.floor(cells.length / ENOUGH_CELLS))
    const mean = meanSlope(step === 1 ? cells : cells.filter((_, at) => at % step === 0), window)
    let squares = 0
    for (const weight of mean.points.values()) squares += weight * weight
    const pointM2 = errors.levelSdM ** 2 + errors.planSdM ** 2 * mean.gradientSquares
    const tilt = errors.levelSdPerM ** 2 * (mean.east ** 2 + mean.north ** 2)
    if (roughnessM === 0) return toDegrees(Math.sqrt(pointM2 * squares + tilt))
    // The variogram's coefficient is half the mean square difference over one metre.
    const between = (roughnessM ** 2 / 2) * unitVariance(placesOf(mean, window))
    return toDegrees(Math.sqrt(pointM2 * squares + tilt + between))
  }
}

/** A square of cells and its part in the mean: the mean of its fall, east and north. */
interface Block {
  inside: number
  eastM: number
  northM: number
  east: number
  north: number
}

/** The mean slope of some cells as a sum over points, and as a sum over blocks of ground. */
interface MeanSlope {
  /** Weight of each point's level in the mean [1/m]. */
  readonly points: ReadonlyMap<number, number>
  readonly blocks: Iterable<Block>
  /** Side of a block [cells]. */
  readonly side: number
  readonly east: number
  readonly north: number
  readonly gradientSquares: number
}

function meanSlope(cells: readonly number[], window: Window): MeanSlope {
  const { frame, table, share } = window
  const side = Math.ceil(Math.sqrt(cells.length / ENOUGH_BLOCKS))
  const inside = cells.reduce((sum, cell) => sum + share[cell]!, 0)
  const points = new Map<number, number>()
  const blocks = new Map<number, Block>()
  const sum = gradientSum()
  let [east, north, gradientSquares] = [0, 0, 0]
  for (const cell of cells) {
    sumGradients(sum, window, cell)
    const [p, q] = [gradientOf(sum.east, sum, table), gradientOf(sum.north, sum, table)]
    const steepness = Math.hypot(p, q)
    const part = share[cell]! / inside
    const perDegree = part / (1 + steepness * steepness)
    // Level ground has no fall; any direction serves, as all are alike there.
    const alongEast = steepness > 0 ? (perDegree * p) / steepness : 0
    const alongNorth = steepness > 0 ? (perDegree * q) / steepness : perDegree
    for (let at = 0; at < sum.count; at++) {
      const point = sum.points[at]!
      const weight = alongEast * sum.east[at]! + alongNorth * sum.north[at]!
      points.set(point, (points.get(point) ?? 0) + weight)
    }
    addTo(blocks, { frame, side, cell, part }, [alongEast, alongNorth])
    east += alongEast
    north += alongNorth
    gradientSquares += part * steepness * steepness
  }
  return { points, blocks: blocks.values(), side, east, north, gradientSquares }
}

interface PartOfBlock {
  readonly frame: GridFrame
  /** Side of a block [cells]. */
  readonly side: number
  readonly cell: number
  readonly part: number
}

function addTo(
  blocks: Map<number, Block>,
  { frame, side, cell, part }: PartOfBlock,
  [east, north]: readonly [number, number],
): void {
  const column = cell % frame.columns
  const row = (cell - column) / frame.columns
  const key = Math.floor(row / side) * frame.columns + Math.floor(column / side)
  const block = blocks.get(key) ?? { inside: 0, eastM: 0, northM: 0, east: 0, north: 0 }
  const centre = cellCentre(frame, cell)
  block.inside += part
  block.eastM += part * centre.eastM
  block.northM += part * centre.northM
  block.east += east
  block.north += north
  blocks.set(key, block)
}

// The points, and against them the ground along the sides of every block.
function placesOf({ points, blocks, side }: MeanSlope, { frame, table }: Window): WeightedPlace[] {
  const blockM = side * frame.cellM
  const places: WeightedPlace[] = points.size > MANY_POINTS ? together(points, blockM / 2, table) : []
  if (places.length === 0)
    for (const [point, weight] of points)
      places.push({ xM: table.eastM[point]!, yM: table.northM[point]!, weight })
  const spread = sideSpread(side, frame.cellM)
  for (const block of blocks) addSides(places, block, spread)
  return places
}

/** Where the levels lie that the mean gradient of a block comes from, for a gradient along one direction. */
interface SideSpread {
  /** Length that the gradient is taken over [m]. */
  readonly lengthM: number
  /** Half the distance of two places that stand for the breadth of a side, and for its thickness [m]. */
  readonly breadthM: number
  readonly thicknessM: number
}

// Gradients of neighbouring cells share ends, and what lies between cancels: of their mean only two sides are left, as long
// as the block and as thick as a window, or the other way round in a block smaller than a window.
function sideSpread(side: number, cellM: number): SideSpread {
  const windowCells = gradientSupportM(cellM) / cellM
  return {
    lengthM: Math.max(side, windowCells) * cellM,
    breadthM: deviationCells(side) * cellM,
    thicknessM: deviationCells(Math.min(side, windowCells)) * cellM,
  }
}

// Standard deviation of places one cell apart: two places that far to both sides stand for all of them (Gauss).
const deviationCells = (count: number): number => Math.sqrt((count * count - 1) / 12)

const BOTH_SIDES = [1, -1] as const

function addSides(
  places: WeightedPlace[],
  block: Block,
  { lengthM, breadthM, thicknessM }: SideSpread,
): void {
  const [xM, yM] = [block.eastM / block.inside, block.northM / block.inside]
  const [east, north] = [block.east / lengthM / 4, block.north / lengthM / 4]
  for (const end of BOTH_SIDES)
    for (const thick of BOTH_SIDES)
      for (const broad of BOTH_SIDES) {
        const alongM = (end * lengthM) / 2 + thick * thicknessM
        const acrossM = broad * breadthM
        places.push(
          { xM: xM + alongM, yM: yM + acrossM, weight: -end * east },
          { xM: xM + acrossM, yM: yM + alongM, weight: -end * north },
        )
      }
}

// Points of one square weighed together in its middle, so that close surveys take no longer.
function together(points: MeanSlope['points'], sideM: number, table: TriangleTable): WeightedPlace[] {
  const squares = new Map<string, WeightedPlace>()
  for (const [point, weight] of points) {
    const [column, row] = [Math.floor(table.eastM[point]! / sideM), Math.floor(table.northM[point]! / sideM)]
    const key = `${column} ${row}`
    squares.set(key, {
      xM: (column + 0.5) * sideM,
      yM: (row + 0.5) * sideM,
      weight: (squares.get(key)?.weight ?? 0) + weight,
    })
  }
  return [...squares.values()]
}
