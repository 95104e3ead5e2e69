import {
  levelOnTin,
  nodeLines,
  triangulateAlong,
  type LevelPoint,
  type LineLevel,
  type LinePiece,
  type NodedLines,
  type Tin,
} from '#core/geometry'
import type { GroundLine, GroundPlace, GroundPlaces } from './ground-places'
import { levelText } from './surface-notes'
import type { SurfaceNote } from './surface.types'
import { DISAGREE_M, SAME_PLACE_M } from './tolerances'

/** Triangles along lines, and where they came from. */
export interface LineNet {
  readonly tin: Tin
  /** The places the first points of the triangles come from, in the same order; further points are crossings of lines. */
  readonly places: readonly GroundPlace[]
  /** The pieces of lines that are edges of triangles. */
  readonly pieces: readonly LinePiece[]
  readonly notes: readonly SurfaceNote[]
}

/**
 * Joins places into triangles along the lines through them. Lines are split where they meet; corners without a level take
 * it from the triangles of the others.
 *
 * @param ground - places, each once, and the lines through them
 * @returns the triangles and what was changed
 */
export function lineNet(ground: GroundPlaces): LineNet {
  const levelled = withLevels(ground)
  const noded = node(levelled)
  const { tin, missed } = triangulateAlong(noded.points, noded.pieces)
  const lost = new Set(missed)
  return {
    tin,
    places: levelled.places,
    pieces: noded.pieces.filter((_, at) => !lost.has(at)),
    notes: [
      ...levelled.notes,
      ...nodeNotes(levelled, noded),
      ...missed.map((at) => missedNote(ground.lines, noded, noded.pieces[at]!)),
    ],
  }
}

interface LevelledPlaces extends GroundPlaces {
  readonly places: readonly (GroundPlace & LevelPoint)[]
  readonly notes: readonly SurfaceNote[]
}

function withLevels(ground: GroundPlaces): LevelledPlaces {
  if (ground.places.every(isLevelled))
    return { ...ground, places: ground.places.filter(isLevelled), notes: [] }
  const base = node(
    keep(
      ground,
      ground.places.map((place) => (isLevelled(place) ? place : undefined)),
    ),
  )
  const levelAt = levelOnTin(triangulateAlong(base.points, base.pieces).tin)
  const notes: SurfaceNote[] = []
  const places = ground.places.map((place) => {
    if (isLevelled(place)) return place
    const levelM = levelAt(place)
    if (levelM !== undefined) return { ...place, levelM }
    const what = `${place.name} has no level of its own and lies beyond the levels measured; it is left out.`
    notes.push({ kind: 'left-out', what, at: { eastM: place.eastM, northM: place.northM } })
    return undefined
  })
  return { ...keep(ground, places), notes }
}

function isLevelled(place: GroundPlace): place is GroundPlace & LevelPoint {
  return place.levelM !== undefined
}

// The places that are left and the pieces between them, renumbered.
function keep(ground: GroundPlaces, places: readonly ((GroundPlace & LevelPoint) | undefined)[]) {
  const numbers = new Map<number, number>()
  const kept = places.filter((place, at) => {
    if (place) numbers.set(at, numbers.size)
    return place !== undefined
  })
  const pieces = ground.pieces.flatMap(({ from, to, line }): LinePiece[] => {
    const [start, end] = [numbers.get(from), numbers.get(to)]
    return start === undefined || end === undefined ? [] : [{ from: start, to: end, line }]
  })
  return { places: kept, pieces, lines: ground.lines }
}

function node({ places, pieces, lines }: Omit<LevelledPlaces, 'notes'>): NodedLines {
  const points = places.map(({ eastM, northM, levelM }) => ({ eastM, northM, levelM }))
  const crossingLevelM = (one: LineLevel, other: LineLevel) => {
    const [trust, against] = [trustIn(lines[one.line]!), trustIn(lines[other.line]!)]
    if (trust === against) return (one.levelM + other.levelM) / 2
    return trust > against ? one.levelM : other.levelM
  }
  const noded = nodeLines(points, pieces, { toleranceM: SAME_PLACE_M, crossingLevelM })
  return {
    ...noded,
    pieces: [...noded.pieces].sort((one, other) => one.from - other.from || one.to - other.to),
  }
}

// A wall's level holds before a line's, and a measured line's before one read from the levels around.
function trustIn({ rank, measured }: GroundLine): number {
  if (rank === 'wall') return 2
  return measured ? 1 : 0
}

function nodeNotes(
  { places, lines }: LevelledPlaces,
  { points, snapped, crossings }: NodedLines,
): SurfaceNote[] {
  const placeOf = (point: number) => ({ eastM: points[point]!.eastM, northM: points[point]!.northM })
  const onLine = snapped.flatMap(({ point, on }): SurfaceNote[] => {
    const place = places[point]
    const line = lines[on.line]!
    if (!place || (place.onWall && line.rank === 'wall')) return []
    const gapM = on.levelM - place.levelM
    const gap =
      line.measured && Math.abs(gapM) > DISAGREE_M
        ? `; the line had ${levelText(on.levelM)} there, ${levelText(place.levelM)} holds`
        : ''
    const what = `${place.name} lies on ${line.name}, which now goes through it${gap}.`
    return [{ kind: 'snapped', what, at: placeOf(point) }]
  })
  const crossed = crossings.flatMap(({ point, one, other }): SurfaceNote[] => {
    const [first, second] = [lines[one.line]!, lines[other.line]!]
    const levelM = points[point]!.levelM
    const split: SurfaceNote = {
      kind: 'split',
      what: `${capital(first.name)} and ${second.name} cross; both are split there, at ${levelText(levelM)}.`,
      at: placeOf(point),
    }
    if (!first.measured || !second.measured || Math.abs(one.levelM - other.levelM) <= DISAGREE_M)
      return [split]
    const what = `Where they cross, ${first.name} has ${levelText(one.levelM)} and ${second.name} ${levelText(other.levelM)}; ${levelText(levelM)} is used.`
    return [split, { kind: 'disagreement', what, at: placeOf(point) }]
  })
  return [...onLine, ...crossed]
}

function missedNote(lines: readonly GroundLine[], { points }: NodedLines, piece: LinePiece): SurfaceNote {
  const { eastM, northM } = points[piece.from]!
  return {
    kind: 'left-out',
    what: `A piece of ${lines[piece.line]!.name} could not be made an edge of triangles and is left out.`,
    at: { eastM, northM },
  }
}

function capital(name: string): string {
  return name.charAt(0).toUpperCase() + name.slice(1)
}
