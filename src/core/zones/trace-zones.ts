import type { GridFrame, PlanPoint, Ring } from '#core/geometry'
import { boundaryLine, type BoundaryLine } from './boundary-line'
import { latticeLoop } from './lattice-loop'
import { simplifyLine } from './simplify-line'

/** Stair-steps of cells deviate by up to one cell from the line they stand for; the rest is ragged edge [cells]. */
const STAIR_CELLS = 1.5

/** Corners this close to the plot's boundary are moved onto it [cells]. */
const SNAP_CELLS = 1.6

/** What outlines are traced on. */
interface Sheet {
  readonly zoneOfCell: Int16Array
  readonly frame: GridFrame
  readonly boundary: BoundaryLine
}

/**
 * Outlines of zones, traced from their cells and simplified. Neighbours share the same line between them, and
 * outlines follow the plot's boundary where they meet it.
 *
 * @param zoneOfCell - zone of each cell, -1 outside
 * @param count - number of zones [zones], 0 or more
 * @param frame - where the cells lie
 * @param boundary - the plot's outline
 * @returns one outline to a zone, in their order, anticlockwise; that of the largest piece when a zone lies in pieces
 */
export function traceZones(
  zoneOfCell: Int16Array,
  count: number,
  frame: GridFrame,
  boundary: Ring,
): readonly Ring[] {
  const sheet: Sheet = { zoneOfCell, frame, boundary: boundaryLine(boundary) }
  return Array.from({ length: count }, (_, zone) => traceZone(sheet, zone))
}

function traceZone(sheet: Sheet, zone: number): Ring {
  const loop = latticeLoop(sheet.zoneOfCell, zone, sheet.frame)
  const first = loop.findIndex((corner) => isNode(sheet, corner))
  if (first < 0 && bordersOutside(sheet, loop)) return sheet.boundary.ring
  const turned = first > 0 ? [...loop.slice(first), ...loop.slice(0, first)] : loop
  return arcsOf(sheet, turned).flatMap((arc) => arcPoints(sheet, arc).slice(0, -1))
}

// Pieces of an outline from node to node; the whole outline, closed, where it has no node.
function arcsOf(sheet: Sheet, loop: readonly number[]): number[][] {
  const arcs: number[][] = []
  let arc: number[] = []
  for (const corner of [...loop, loop[0] ?? 0]) {
    arc.push(corner)
    if (arc.length > 1 && isNode(sheet, corner)) {
      arcs.push(arc)
      arc = [corner]
    }
  }
  return arc.length > 1 ? [...arcs, arc] : arcs
}

// Points of one arc, both ends included.
function arcPoints(sheet: Sheet, arc: readonly number[]): PlanPoint[] {
  const places = arc.map((corner) => placeOf(sheet.frame, corner))
  const outer = bordersOutside(sheet, arc) ? alongBoundary(sheet, places) : undefined
  if (outer) return outer
  const backwards = (arc[0] ?? 0) > (arc.at(-1) ?? 0)
  const ends = places.map((place, index) =>
    index === 0 || index === places.length - 1 ? snapped(sheet, arc[index] ?? 0, place) : place,
  )
  const line = simplifyLine(backwards ? ends.toReversed() : ends, STAIR_CELLS * sheet.frame.cellM)
  return backwards ? line.toReversed() : line
}

// The plot's own boundary from one end of the arc to the other; undefined where the arc strays from it.
function alongBoundary({ boundary, frame }: Sheet, places: readonly PlanPoint[]): PlanPoint[] | undefined {
  const nearM = SNAP_CELLS * frame.cellM
  const from = places[0]
  const to = places.at(-1)
  if (!from || !to || places.some((place) => boundary.nearest(place).gapM > nearM)) return undefined
  const path = boundary.path(boundary.nearest(from), boundary.nearest(to))
  const arcM = (places.length - 1) * frame.cellM
  return from !== to && path.lengthM > arcM + 2 * nearM
    ? [boundary.nearest(from).point, boundary.nearest(to).point]
    : path.points
}

// A node on the plot's edge moves onto its boundary, so that all outlines that end there meet.
function snapped({ zoneOfCell, frame, boundary }: Sheet, corner: number, place: PlanPoint): PlanPoint {
  if (!cornerZones(zoneOfCell, frame, corner).includes(-1)) return place
  const nearest = boundary.nearest(place)
  return nearest.gapM <= SNAP_CELLS * frame.cellM ? nearest.point : place
}

const placeOf = (frame: GridFrame, corner: number): PlanPoint => ({
  eastM: frame.westM + (corner % (frame.columns + 1)) * frame.cellM,
  northM: frame.southM + (frame.rows - Math.floor(corner / (frame.columns + 1))) * frame.cellM,
})

// A corner where three or more zones meet, the outside counted, or where outlines touch.
function isNode({ zoneOfCell, frame }: Sheet, corner: number): boolean {
  const [northWest, northEast, southWest, southEast] = cornerZones(zoneOfCell, frame, corner)
  const different = new Set([northWest, northEast, southWest, southEast]).size
  return different > 2 || (different === 2 && northWest === southEast && northEast === southWest)
}

// Zones of the four cells about a corner: north-west, north-east, south-west, south-east.
function cornerZones(zoneOfCell: Int16Array, frame: GridFrame, corner: number): number[] {
  const row = Math.floor(corner / (frame.columns + 1))
  const column = corner % (frame.columns + 1)
  const at = (r: number, c: number) =>
    r < 0 || c < 0 || r >= frame.rows || c >= frame.columns ? -1 : (zoneOfCell[r * frame.columns + c] ?? -1)
  return [at(row - 1, column - 1), at(row - 1, column), at(row, column - 1), at(row, column)]
}

// Whether the arc's right-hand side is outside the plot: both ends of its first side touch the same outside cell.
function bordersOutside({ zoneOfCell, frame }: Sheet, arc: readonly number[]): boolean {
  const from = arc[0] ?? 0
  const step = (arc[1] ?? 0) - from
  const [northWest, northEast, southWest, southEast] = cornerZones(zoneOfCell, frame, from)
  if (step === 1) return southEast === -1
  if (step === -1) return northWest === -1
  return (step < 0 ? northEast : southWest) === -1
}
