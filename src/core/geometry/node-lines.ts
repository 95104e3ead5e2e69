import { boxIndex, nearPiece } from './box-index'
import type { LevelPoint, PlanPoint } from './geometry.types'
import { samePlaces } from './same-places'

/** A straight piece of a line between two points, by their numbers. */
export interface LinePiece {
  readonly from: number
  readonly to: number
  /** Which line it belongs to, in the caller's own numbering. */
  readonly line: number
}

/** A line at a place, with the level it has there. */
export interface LineLevel {
  readonly line: number
  readonly levelM: number
}

/** Lines that meet only at points, and what was done to get there. */
export interface NodedLines {
  /** The points as given, then one for each crossing. */
  readonly points: readonly LevelPoint[]
  readonly pieces: readonly LinePiece[]
  /** Points found on a line, which now goes through them. */
  readonly snapped: readonly { readonly point: number; readonly on: LineLevel }[]
  /** Where lines cross; the point is one of those added. */
  readonly crossings: readonly {
    readonly point: number
    readonly one: LineLevel
    readonly other: LineLevel
  }[]
}

/** How lines are joined. */
export interface NodingRules {
  /** A point no farther than this from a line lies on it [m], above 0. */
  readonly toleranceM: number
  /** Level where two lines cross, from the levels of both. */
  readonly crossingLevelM: (one: LineLevel, other: LineLevel) => number
}

/** Splitting bends lines by the tolerance at most, which can bring them over others; a few rounds settle it [rounds]. */
const MOST_ROUNDS = 40

/**
 * Splits lines wherever they meet: at points that lie on them and where they cross one another.
 *
 * @param points - points [m], no two within the tolerance of each other
 * @param pieces - pieces of lines between them
 * @param rules - tolerance, and how a crossing gets its level
 * @returns the same lines in pieces that meet only at their ends; doubled pieces and those of no length are left out
 */
export function nodeLines(
  points: readonly LevelPoint[],
  pieces: readonly LinePiece[],
  rules: NodingRules,
): NodedLines {
  const net: Net = { points: [...points], pieces: single(pieces), snapped: [], crossings: [] }
  for (let round = 0; round < MOST_ROUNDS && net.pieces.length > 0; round++) {
    const cuts = cutsAtPoints(net, rules)
    const found = cuts.size > 0 ? cuts : cutsAtCrossings(net, rules)
    if (found.size === 0) break
    net.pieces = single(net.pieces.flatMap((piece, at) => split(piece, found.get(at))))
  }
  return net
}

interface Net {
  readonly points: LevelPoint[]
  pieces: readonly LinePiece[]
  readonly snapped: { readonly point: number; readonly on: LineLevel }[]
  readonly crossings: { readonly point: number; readonly one: LineLevel; readonly other: LineLevel }[]
}

/** Where a piece is cut: a point and how far along it lies, 0 to 1. */
interface Cut {
  readonly point: number
  readonly share: number
}

type Cuts = Map<number, Cut[]>

function addCut(cuts: Cuts, piece: number, cut: Cut): void {
  const held = cuts.get(piece)
  if (held) held.push(cut)
  else cuts.set(piece, [cut])
}

function cutsAtPoints({ points, pieces, snapped }: Net, { toleranceM }: NodingRules): Cuts {
  const cuts: Cuts = new Map()
  const index = boxIndex(points.length, (at) => boxOfEnds(points[at]!, points[at]!))
  pieces.forEach((piece, at) => {
    const [from, to] = [points[piece.from]!, points[piece.to]!]
    index.search(nearPiece(from, to, toleranceM), (point) => {
      if (point === piece.from || point === piece.to) return
      const share = shareOn(points[point]!, from, to, toleranceM)
      if (share === undefined) return
      addCut(cuts, at, { point, share })
      snapped.push({ point, on: levelOn(piece, points, share) })
    })
  })
  return cuts
}

// How far along a piece a point lies that is on it; undefined beside it or beyond its ends.
function shareOn(point: PlanPoint, from: PlanPoint, to: PlanPoint, toleranceM: number): number | undefined {
  const [east, north] = [to.eastM - from.eastM, to.northM - from.northM]
  const [pointEast, pointNorth] = [point.eastM - from.eastM, point.northM - from.northM]
  const lengthM = Math.hypot(east, north)
  if (Math.abs(east * pointNorth - north * pointEast) > toleranceM * lengthM) return undefined
  const share = (east * pointEast + north * pointNorth) / lengthM ** 2
  return share > 0 && share < 1 ? share : undefined
}

function cutsAtCrossings(net: Net, { toleranceM, crossingLevelM }: NodingRules): Cuts {
  const crossings = crossingsOf(net)
  const group = samePlaces(
    crossings.map(({ place }) => place),
    toleranceM,
  )
  const cuts: Cuts = new Map()
  const added = new Map<number, number>()
  crossings.forEach((crossing, at) => {
    const { place, one, other } = crossing
    const levels = [
      levelOn(net.pieces[one.piece]!, net.points, one.share),
      levelOn(net.pieces[other.piece]!, net.points, other.share),
    ] as const
    let point = added.get(group[at]!)
    if (point === undefined) {
      point = net.points.push({ ...place, levelM: crossingLevelM(...levels) }) - 1
      added.set(group[at]!, point)
    }
    net.crossings.push({ point, one: levels[0], other: levels[1] })
    addCut(cuts, one.piece, { point, share: one.share })
    addCut(cuts, other.piece, { point, share: other.share })
  })
  return cuts
}

interface OnPiece {
  readonly piece: number
  readonly share: number
}

interface Crossing {
  readonly place: PlanPoint
  readonly one: OnPiece
  readonly other: OnPiece
}

// From west to east, so that the order of the lines makes no difference.
function crossingsOf({ points, pieces }: Net): Crossing[] {
  const index = boxIndex(pieces.length, (at) => boxOfEnds(points[pieces[at]!.from]!, points[pieces[at]!.to]!))
  const found: Crossing[] = []
  pieces.forEach((piece, at) => {
    const [from, to] = [points[piece.from]!, points[piece.to]!]
    index.search(nearPiece(from, to, 0), (other) => {
      if (other <= at || sharesEnd(piece, pieces[other]!)) return
      const [start, end] = [points[pieces[other]!.from]!, points[pieces[other]!.to]!]
      const shares = crossingShares(from, to, start, end)
      if (!shares) return
      const [share, otherShare] = shares
      found.push({
        place: {
          eastM: from.eastM + share * (to.eastM - from.eastM),
          northM: from.northM + share * (to.northM - from.northM),
        },
        one: { piece: at, share },
        other: { piece: other, share: otherShare },
      })
    })
  })
  return found.sort(
    ({ place: one }, { place: other }) => one.eastM - other.eastM || one.northM - other.northM,
  )
}

function sharesEnd(one: LinePiece, other: LinePiece): boolean {
  return one.from === other.from || one.from === other.to || one.to === other.from || one.to === other.to
}

// How far along each of two pieces they cross; undefined when they do not.
function crossingShares(
  from: PlanPoint,
  to: PlanPoint,
  start: PlanPoint,
  end: PlanPoint,
): readonly [number, number] | undefined {
  const [east, north] = [to.eastM - from.eastM, to.northM - from.northM]
  const [otherEast, otherNorth] = [end.eastM - start.eastM, end.northM - start.northM]
  const turn = east * otherNorth - north * otherEast
  if (turn === 0) return undefined
  const [gapEast, gapNorth] = [start.eastM - from.eastM, start.northM - from.northM]
  const share = (gapEast * otherNorth - gapNorth * otherEast) / turn
  const otherShare = (gapEast * north - gapNorth * east) / turn
  return share > 0 && share < 1 && otherShare > 0 && otherShare < 1 ? [share, otherShare] : undefined
}

function levelOn({ from, to, line }: LinePiece, points: readonly LevelPoint[], share: number): LineLevel {
  const [start, end] = [points[from]!.levelM, points[to]!.levelM]
  return { line, levelM: start + share * (end - start) }
}

function split(piece: LinePiece, cuts: readonly Cut[] | undefined): LinePiece[] {
  if (!cuts) return [piece]
  const inOrder = [...cuts].sort((one, other) => one.share - other.share).map(({ point }) => point)
  const ends = [piece.from, ...inOrder, piece.to]
  return ends.slice(1).map((to, at) => ({ from: ends[at]!, to, line: piece.line }))
}

// Each piece once, whichever way it runs, and none without length.
function single(pieces: readonly LinePiece[]): LinePiece[] {
  const held = new Set<string>()
  return pieces.filter(({ from, to }) => {
    const key = from < to ? `${from} ${to}` : `${to} ${from}`
    if (from === to || held.has(key)) return false
    held.add(key)
    return true
  })
}

function boxOfEnds(one: PlanPoint, other: PlanPoint) {
  return {
    westM: Math.min(one.eastM, other.eastM),
    southM: Math.min(one.northM, other.northM),
    eastM: Math.max(one.eastM, other.eastM),
    northM: Math.max(one.northM, other.northM),
  }
}
