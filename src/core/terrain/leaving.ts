import { cellCentre, distanceToSegmentM, type PlanPoint } from '#core/geometry'
import type { Surface } from '#core/survey'
import type { Leaving } from './around.types'
import { boundaryPieces, stretchFinder, type BoundaryPiece, type BoundaryStretch } from './boundary-pieces'
import { eightWays, neighbourhood, type Neighbourhood } from './neighbours'
import { riseOfCell } from './place-on-ground'
import type { Terrain } from './terrain.types'

/** Water crosses a side that it meets more steeply than 20° (sine), as in the ways of water; own judgement [ratio]. */
const CROSSES_SIDE = Math.sin((20 * Math.PI) / 180)

/** Pieces farther apart than this along the boundary belong to different stretches [cells]; own judgement. */
const GAP_CELLS = 1.5

/** Stretches with less than this share of the plot's water are left out [ratio]; own judgement. */
const LEAST_SHARE = 0.005

/**
 * The stretches of the boundary over which water leaves the plot, with the ground whose water each takes. Ground off the
 * plot that drains through it does not count.
 *
 * @param surface - the ground
 * @param terrain - its facts
 * @param stretches - what was described of the boundary; a stretch ends where another kind of neighbour begins
 * @returns the stretches, the largest share first; water that runs into a hole of the plot is in none
 */
export function leavingOf(
  surface: Surface,
  terrain: Terrain,
  stretches: readonly BoundaryStretch[],
): readonly Leaving[] {
  const pieces = boundaryPieces(surface)
  const takenM2 = outflowOfPieces(surface, terrain, pieces)
  const stretchAt = stretchFinder(surface.boundary, stretches)
  const wet = pieces.flatMap((piece, at): WetPiece[] => {
    const areaM2 = takenM2[at]!
    return areaM2 > 0 ? [{ piece, areaM2, beyondId: stretchAt((piece.fromM + piece.toM) / 2)?.id }] : []
  })
  const plotM2 = surface.share.reduce((sum, share) => sum + share, 0) * surface.frame.cellM ** 2
  return runsOf(wet, pieces.at(-1)?.toM ?? 0, GAP_CELLS * surface.frame.cellM)
    .map((run) => told(run, plotM2))
    .filter(({ share }) => share >= LEAST_SHARE)
    .sort((one, other) => other.share - one.share)
}

interface WetPiece {
  readonly piece: BoundaryPiece
  readonly areaM2: number
  readonly beyondId: string | undefined
}

// Area whose water leaves over each piece.
function outflowOfPieces(surface: Surface, terrain: Terrain, pieces: readonly BoundaryPiece[]): Float64Array {
  const hood = neighbourhood(surface)
  const areaM2 = ownAreaDrainedM2(surface, terrain)
  const ofCell = new Map<number, number[]>()
  for (const [at, { cell }] of pieces.entries()) ofCell.set(cell, [...(ofCell.get(cell) ?? []), at])
  const takenM2 = new Float64Array(pieces.length)
  const { starts } = terrain.flow
  for (let cell = 0; cell < areaM2.length; cell++) {
    if (!hood.inside[cell] || starts[cell] !== starts[cell + 1]) continue
    const own = ofCell.get(cell) ?? []
    const sharing = { surface, terrain, pieces, takenM2 }
    // A cell beside a corner may fall over a side that only its neighbour touches.
    if (!sharedOut({ cell, areaM2: areaM2[cell]!, near: own }, sharing)) {
      const near = [...own, ...beside(cell, ofCell, hood)]
      if (!sharedOut({ cell, areaM2: areaM2[cell]!, near }, sharing))
        giveNearest({ cell, areaM2: areaM2[cell]!, near }, sharing)
    }
  }
  return takenM2
}

function beside(cell: number, ofCell: ReadonlyMap<number, number[]>, hood: Neighbourhood): number[] {
  return eightWays.flatMap((_, way) =>
    hood.around[cell]! & (1 << way) ? (ofCell.get(cell + hood.offsets[way]!) ?? []) : [],
  )
}

interface Sharing {
  readonly surface: Surface
  readonly terrain: Terrain
  readonly pieces: readonly BoundaryPiece[]
  readonly takenM2: Float64Array
}

// Over the pieces that the fall crosses, each by its width across it; false when there is none.
function sharedOut(
  { cell, areaM2, near }: { cell: number; areaM2: number; near: readonly number[] },
  { terrain, pieces, takenM2 }: Sharing,
): boolean {
  const rise = riseOfCell(terrain, cell)
  const steepness = Math.hypot(rise.east, rise.north)
  if (steepness === 0) return false
  const widths = near.map((at) => {
    const { outEast, outNorth, fromM, toM } = pieces[at]!
    const outward = -(outEast * rise.east + outNorth * rise.north) / steepness
    return outward >= CROSSES_SIDE ? outward * (toM - fromM) : 0
  })
  const whole = widths.reduce((sum, width) => sum + width, 0)
  if (whole > 0) near.forEach((at, place) => (takenM2[at]! += (areaM2 * widths[place]!) / whole))
  return whole > 0
}

// A cell without any piece near it drains into a hole of the plot.
function giveNearest(
  { cell, areaM2, near }: { cell: number; areaM2: number; near: readonly number[] },
  { surface, pieces, takenM2 }: Sharing,
): void {
  const nearest = nearestPiece(cellCentre(surface.frame, cell), near, pieces)
  if (nearest !== undefined) takenM2[nearest]! += areaM2
}

function nearestPiece(
  place: PlanPoint,
  near: readonly number[],
  pieces: readonly BoundaryPiece[],
): number | undefined {
  const awayM = (at: number) => distanceToSegmentM(place, pieces[at]!.from, pieces[at]!.to)
  return near.reduce<number | undefined>(
    (best, at) => (best === undefined || awayM(at) < awayM(best) ? at : best),
    undefined,
  )
}

// Plan area of the plot alone that drains through each cell.
function ownAreaDrainedM2({ share, frame }: Surface, { flow }: Terrain): Float64Array {
  const areaM2 = share.map((part) => part * frame.cellM ** 2)
  for (const cell of flow.order)
    for (let link = flow.starts[cell]!; link < flow.starts[cell + 1]!; link++)
      areaM2[flow.to[link]!]! += areaM2[cell]! * flow.share[link]!
  return areaM2
}

// Pieces that follow one another and run to the same neighbour; the last run may go on over the first corner.
function runsOf(wet: readonly WetPiece[], roundM: number, gapM: number): WetPiece[][] {
  const runs: WetPiece[][] = []
  const follows = (before: WetPiece | undefined, next: WetPiece, shiftM: number) =>
    before?.beyondId === next.beyondId &&
    before !== undefined &&
    next.piece.fromM + shiftM - before.piece.toM <= gapM
  for (const one of wet) {
    const run = runs.at(-1)
    if (run && follows(run.at(-1), one, 0)) run.push(one)
    else runs.push([one])
  }
  const [first, ...others] = runs
  const last = others.at(-1)
  return first?.[0] && last && follows(last.at(-1), first[0], roundM)
    ? [[...last, ...first], ...others.slice(0, -1)]
    : runs
}

function told(run: readonly WetPiece[], plotM2: number): Leaving {
  const areaM2 = run.reduce((sum, one) => sum + one.areaM2, 0)
  const most = run.reduce((best, one) => (one.areaM2 > best.areaM2 ? one : best), run[0]!)
  const line = run.flatMap(({ piece }) => [piece.from, piece.to])
  return {
    at: middleOf(most.piece),
    line: line.filter((place, at) => at === 0 || !samePlace(place, line[at - 1])),
    areaM2,
    share: areaM2 / plotM2,
    beyondId: most.beyondId,
  }
}

const middleOf = ({ from, to }: BoundaryPiece): PlanPoint => ({
  eastM: (from.eastM + to.eastM) / 2,
  northM: (from.northM + to.northM) / 2,
})

const samePlace = (one: PlanPoint, other: PlanPoint | undefined): boolean =>
  other !== undefined && one.eastM === other.eastM && one.northM === other.northM
