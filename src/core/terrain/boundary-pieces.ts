import { cellAt, nearestOnRing, sides, signedAreaM2, type PlanPoint, type Ring } from '#core/geometry'
import type { Surface } from '#core/survey'
import { eightWays } from './neighbours'

/** The part of a side of the boundary that belongs to one cell. */
export interface BoundaryPiece {
  readonly cell: number
  readonly from: PlanPoint
  readonly to: PlanPoint
  /** Where it begins and ends, along the boundary from its first corner [m]. */
  readonly fromM: number
  readonly toM: number
  /** Unit direction out of the plot. */
  readonly outEast: number
  readonly outNorth: number
}

/** A stretch of the boundary that the person described, going on in the order of its corners. */
export interface BoundaryStretch {
  readonly id: string
  /** Where it begins and ends; the nearest place on the boundary counts [m]. */
  readonly from: PlanPoint
  readonly to: PlanPoint
}

/** How far inwards of a side its cell is looked for [cells]. */
const INWARDS_CELLS = 1e-3

/**
 * The boundary cut at the edges of the cells, in the order of its corners.
 *
 * @param surface - the ground
 * @returns its pieces; where the side runs beside a sliver that is no cell, the neighbouring cell's
 */
export function boundaryPieces(surface: Surface): readonly BoundaryPiece[] {
  const { boundary } = surface
  const turn = signedAreaM2(boundary) < 0 ? -1 : 1
  const pieces: BoundaryPiece[] = []
  let fromM = 0
  for (const [from, to] of sides(boundary)) {
    const lengthM = Math.hypot(to.eastM - from.eastM, to.northM - from.northM)
    if (lengthM === 0) continue
    const out = {
      outEast: (turn * (to.northM - from.northM)) / lengthM,
      outNorth: (-turn * (to.eastM - from.eastM)) / lengthM,
    }
    addPieces(pieces, surface, { from, to, fromM, lengthM, ...out })
    fromM += lengthM
  }
  return pieces
}

interface Side {
  readonly from: PlanPoint
  readonly to: PlanPoint
  readonly fromM: number
  readonly lengthM: number
  readonly outEast: number
  readonly outNorth: number
}

function addPieces(pieces: BoundaryPiece[], surface: Surface, side: Side): void {
  const { outEast, outNorth, fromM, lengthM } = side
  const cuts = cutsOf(surface, side)
  for (let at = 1; at < cuts.length; at++) {
    const [start, end] = [cuts[at - 1]!, cuts[at]!]
    const cell = cellInwards(surface, side, (start + end) / 2)
    if (cell === undefined) continue
    pieces.push({
      cell,
      from: along(side, start),
      to: along(side, end),
      fromM: fromM + start * lengthM,
      toM: fromM + end * lengthM,
      outEast,
      outNorth,
    })
  }
}

// Shares of the side at which it crosses a line between cells, its ends included.
function cutsOf({ frame }: Surface, { from, to }: Side): number[] {
  const cuts = [0, 1]
  const cross = (start: number, end: number, originM: number) => {
    const [low, high] = [Math.min(start, end), Math.max(start, end)]
    for (let line = Math.ceil((low - originM) / frame.cellM); originM + line * frame.cellM < high; line++)
      cuts.push((originM + line * frame.cellM - start) / (end - start))
  }
  cross(from.eastM, to.eastM, frame.westM)
  cross(from.northM, to.northM, frame.southM)
  cuts.sort((one, other) => one - other)
  return cuts.filter((cut, at) => cut >= 0 && cut <= 1 && (at === 0 || cut > (cuts[at - 1] ?? 0)))
}

function cellInwards(surface: Surface, side: Side, share: number): number | undefined {
  const { frame } = surface
  const middle = along(side, share)
  const inwardsM = INWARDS_CELLS * frame.cellM
  const place = {
    eastM: middle.eastM - inwardsM * side.outEast,
    northM: middle.northM - inwardsM * side.outNorth,
  }
  const under = plotCell(surface, place)
  if (under !== undefined) return under
  // A sliver too thin to be a cell: the one that lies straight inwards, or any beside it.
  const deeper = {
    eastM: place.eastM - frame.cellM * side.outEast,
    northM: place.northM - frame.cellM * side.outNorth,
  }
  return (
    plotCell(surface, deeper) ??
    eightWays
      .map(({ east, north }) =>
        plotCell(surface, {
          eastM: place.eastM + east * frame.cellM,
          northM: place.northM + north * frame.cellM,
        }),
      )
      .find((cell) => cell !== undefined)
  )
}

function plotCell({ frame, share }: Surface, place: PlanPoint): number | undefined {
  const cell = cellAt(frame, place)
  return cell !== undefined && share[cell]! > 0 ? cell : undefined
}

function along({ from, to }: Side, share: number): PlanPoint {
  return {
    eastM: from.eastM + share * (to.eastM - from.eastM),
    northM: from.northM + share * (to.northM - from.northM),
  }
}

/**
 * Tells which stretch of the boundary a place along it belongs to.
 *
 * @param boundary - the outline [m]
 * @param stretches - stretches of it; where two overlap the first counts
 * @returns a function from the way along the boundary, from its first corner [m], to the stretch; undefined between them
 */
export function stretchFinder<Stretch extends BoundaryStretch>(
  boundary: Ring,
  stretches: readonly Stretch[],
): (alongM: number) => Stretch | undefined {
  const ends = stretches.map((stretch) => ({
    stretch,
    fromM: alongRingM(boundary, stretch.from),
    toM: alongRingM(boundary, stretch.to),
  }))
  return (alongM) =>
    ends.find(({ fromM, toM }) =>
      fromM < toM ? alongM >= fromM && alongM <= toM : alongM >= fromM || alongM <= toM,
    )?.stretch
}

function alongRingM(ring: Ring, place: PlanPoint): number {
  const { side, share } = nearestOnRing(ring, place)
  return sides(ring).reduce((sum, [from, to], at) => {
    const lengthM = Math.hypot(to.eastM - from.eastM, to.northM - from.northM)
    return at < side ? sum + lengthM : at === side ? sum + share * lengthM : sum
  }, 0)
}
