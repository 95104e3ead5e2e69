import type { PlanPoint } from '#core/geometry'
import type { Surface } from '#core/survey'
import { clipToPlot } from './contours-clip'
import { joinSegments } from './contours-join'
import { centreLattice, type CentreLattice } from './contours-lattice'
import { crossingsOfSquare } from './contours-square'
import type { Terrain } from './terrain.types'

/** A line of equal level. */
export interface Contour {
  readonly levelM: number
  /** Its pieces inside the plot; a closed one ends where it begins [m]. */
  readonly lines: readonly (readonly PlanPoint[])[]
}

/** Most contours drawn over the fall of a plot [count]; own judgement, what a small plan stays readable with. */
const MOST_CONTOURS = 14

/** Steps between contours that a reader expects, each by a power of ten [m]. */
const STEPS = [1, 2, 2.5, 5] as const

/** Smallest step [m]: finer than any survey of a garden. */
const LEAST_STEP_M = 0.01

/**
 * A sensible step between contours: the smallest of 1, 2, 2.5 and 5 by a power of ten with at most 14 of them.
 *
 * @param fallM - highest less lowest level of the plot [m], 0 or more
 * @returns the step [m], 0.01 or more
 * @throws RangeError when the fall is negative or not finite
 */
export function contourStepM(fallM: number): number {
  if (!(fallM >= 0 && fallM < Infinity))
    throw new RangeError(`contourStepM: fallM must be 0 or more, got ${fallM}`)
  for (let power = Math.round(Math.log10(LEAST_STEP_M)); ; power++)
    for (const step of STEPS) {
      const stepM = Number(`${step}e${power}`)
      if (fallM / stepM <= MOST_CONTOURS) return stepM
    }
}

/** Most contours that are worked out at once [count]. */
const MOST_LEVELS = 5000

/**
 * Contours of the ground at whole multiples of a step, straight between cell centres in proportion to their levels, and
 * cut off at the boundary and at holes.
 *
 * Half a cell beyond the outermost centres the ground goes on with their own slope, so that lines reach the boundary.
 *
 * @param surface - the ground
 * @param terrain - its facts
 * @param stepM - difference of level between two contours [m], above 0
 * @returns the contours, the lowest first
 * @throws RangeError when the step is not above 0 or would make more than 5000 contours
 */
export function contoursOf(surface: Surface, terrain: Terrain, stepM: number): readonly Contour[] {
  const lattice = centreLattice(surface, terrain)
  const segments = segmentsByLevel(lattice, checkedStep(surface, stepM))
  return [...segments]
    .sort(([one], [other]) => one - other)
    .filter(([turn]) => isBetweenEnds(surface, turn * stepM, stepM))
    .map(([turn, pairs]) => {
      const levelM = turn * stepM
      const whole = joinSegments(pairs).map((edges) =>
        edges.map((edge) => placeOnEdge(lattice, edge, levelM)),
      )
      return { levelM, lines: clipToPlot(surface, whole) }
    })
    .filter(({ lines }) => lines.length > 0)
}

// A contour at the lowest or highest level itself is a point, or crumbs along the boundary.
function isBetweenEnds({ lowestM, highestM }: Surface, levelM: number, stepM: number): boolean {
  const hairM = HAIR * stepM
  return levelM > lowestM + hairM && levelM < highestM - hairM
}

/** Nearer to the highest or lowest level than this counts as it [share of the step]: rounding. */
const HAIR = 1e-6

function checkedStep({ fallM }: Surface, stepM: number): number {
  if (!(stepM > 0 && fallM / stepM <= MOST_LEVELS))
    throw new RangeError(
      `contoursOf: stepM must be above 0 and make ${MOST_LEVELS} contours at most, got ${stepM} on a fall of ${fallM} m`,
    )
  return stepM
}

// Pieces across single squares between four centres, as pairs of lattice edges, by the contour's multiple of the step.
function segmentsByLevel(lattice: CentreLattice, stepM: number): Map<number, [number, number][]> {
  const { columns, rows, levelM } = lattice
  const byLevel = new Map<number, [number, number][]>()
  for (let row = 0; row + 1 < rows; row++)
    for (let column = 0; column + 1 < columns; column++) {
      const node = row * columns + column
      const corners = [node, node + 1, node + columns + 1, node + columns]
      const levels = corners.map((corner) => levelM[corner]!)
      const [low, high] = [Math.min(...levels), Math.max(...levels)]
      if (!(high >= low)) continue
      for (let turn = Math.ceil(low / stepM); turn * stepM <= high; turn++) {
        const pairs = crossingsOfSquare(node, columns, levels, turn * stepM)
        if (pairs.length === 0) continue
        const held = byLevel.get(turn)
        if (held) held.push(...pairs)
        else byLevel.set(turn, pairs)
      }
    }
  return byLevel
}

// Edge 2n runs from node n eastward, edge 2n + 1 from node n southward.
function placeOnEdge(lattice: CentreLattice, edge: number, levelM: number): PlanPoint {
  const node = edge >> 1
  const east = (edge & 1) === 0
  const other = node + (east ? 1 : lattice.columns)
  const [here, there] = [lattice.levelM[node]!, lattice.levelM[other]!]
  const share = (levelM - here) / (there - here)
  const column = node % lattice.columns
  const row = (node - column) / lattice.columns
  return {
    eastM: lattice.firstEastM + (column + (east ? share : 0)) * lattice.cellM,
    northM: lattice.firstNorthM - (row + (east ? 0 : share)) * lattice.cellM,
  }
}
