import { lineRails, samePlaces, type LinePiece, type PlanPoint } from '#core/geometry'
import type { EdgeChain } from './edge-chains'
import type { SpotPoint } from './spot-points'
import { levelText, rowName } from './surface-notes'
import type { SurfaceNote } from './surface.types'
import { DISAGREE_M, SAME_PLACE_M, WALL_HALF_M } from './tolerances'
import type { Wall } from './walls'

/** What a place comes from; where places meet, a measured point holds before a wall, and a wall before a line. */
type Rank = 'point' | 'wall' | 'line'

/** A place the triangles go through. */
export interface GroundPlace extends PlanPoint {
  /** Its level [m]; undefined when the levels around it must tell. */
  readonly levelM: number | undefined
  readonly rank: Rank
  /** What it is called in a note. */
  readonly name: string
  /** Rows that measured it; none when it comes from a line. */
  readonly rows: readonly number[]
  /** Whether a note already says that it was put onto a wall. */
  readonly onWall?: boolean
}

/** A line through places. */
export interface GroundLine {
  readonly name: string
  readonly rank: 'wall' | 'line'
  /** Whether all its corners have levels of their own. */
  readonly measured: boolean
}

/** Places and the lines through them. */
export interface GroundPlaces {
  readonly places: readonly GroundPlace[]
  readonly pieces: readonly LinePiece[]
  readonly lines: readonly GroundLine[]
}

/**
 * Brings points, walls and edge lines together: a wall becomes two lines, one to each side.
 *
 * @param rows - the rows of the survey, for their marks
 * @param points - the measured places
 * @param walls - the walls
 * @param chains - runs of edge lines
 * @returns all places, and the pieces of lines between them
 */
export function groundPlaces(
  rows: readonly { readonly mark?: string | undefined }[],
  points: readonly SpotPoint[],
  walls: readonly Wall[],
  chains: readonly EdgeChain[],
): GroundPlaces {
  const places: GroundPlace[] = points.map((point) => ({
    ...point,
    rank: 'point',
    name: `Row ${point.rows.map((row) => rowName(rows, row)).join(', ')}`,
  }))
  const pieces: LinePiece[] = []
  const lines: GroundLine[] = []
  const lay = (run: readonly GroundPlace[], line: GroundLine, closed: boolean) => {
    const first = places.length
    for (const place of run) places.push(place)
    const number = lines.push(line) - 1
    for (let at = 1; at < run.length; at++)
      pieces.push({ from: first + at - 1, to: first + at, line: number })
    if (closed) pieces.push({ from: places.length - 1, to: first, line: number })
  }
  for (const wall of walls)
    for (const side of ['left', 'right'] as const)
      lay(
        railOf(wall, side),
        { name: `the ${side} side of ${wall.name}`, rank: 'wall', measured: true },
        wall.closed,
      )
  for (const { line, corners } of chains)
    lay(
      corners.map((corner) => ({ ...corner, rank: 'line', rows: [] })),
      { name: line, rank: 'line', measured: corners.every(({ levelM }) => levelM !== undefined) },
      false,
    )
  return { places, pieces, lines }
}

function railOf({ corners, closed, name }: Wall, side: 'left' | 'right'): GroundPlace[] {
  const rail = lineRails(corners, WALL_HALF_M, closed)[side]
  return rail.map((place, at) => ({
    ...place,
    levelM: side === 'left' ? corners[at]!.leftM : corners[at]!.rightM,
    rank: 'wall',
    name: `Corner ${at + 1} of the wall ${name}`,
    rows: [],
  }))
}

/**
 * Joins places that are one, and puts them in an order that does not depend on the order of rows and lines.
 *
 * @param ground - places and pieces
 * @returns the same with each place once, from west to east, and what was changed
 */
export function joinedPlaces(
  ground: GroundPlaces,
): GroundPlaces & { readonly notes: readonly SurfaceNote[] } {
  const group = samePlaces(ground.places, SAME_PLACE_M)
  const members = new Map<number, GroundPlace[]>()
  ground.places.forEach((place, at) => {
    const held = members.get(group[at]!)
    if (held) held.push(place)
    else members.set(group[at]!, [place])
  })
  const joined = [...members]
    .map(([first, held]) => ({ first, held, place: joinedPlace(held) }))
    .sort(({ place: one }, { place: other }) => one.eastM - other.eastM || one.northM - other.northM)
  const numberOf = new Map(joined.map(({ first }, at) => [first, at]))
  const number = (at: number) => numberOf.get(group[at]!)!
  return {
    places: joined.map(({ place }) => place),
    pieces: ground.pieces.map(({ from, to, line }) => ({ from: number(from), to: number(to), line })),
    lines: ground.lines,
    notes: joined.flatMap(({ held, place }) => joinNotes(held, place)),
  }
}

const ranks: readonly Rank[] = ['point', 'wall', 'line']

function joinedPlace(held: readonly GroundPlace[]): GroundPlace {
  const [only] = held
  if (only && held.length === 1) return only
  const rank = ranks.find((one) => held.some((place) => place.rank === one))
  const first = held.filter((place) => place.rank === rank)
  const mean = (values: readonly number[]) =>
    [...values].sort((one, other) => one - other).reduce((sum, value) => sum + value, 0) / values.length
  const own = first.flatMap(({ levelM }) => levelM ?? [])
  return {
    ...first[0]!,
    eastM: mean(first.map(({ eastM }) => eastM)),
    northM: mean(first.map(({ northM }) => northM)),
    levelM: own.length > 0 ? mean(own) : undefined,
    rows: held.flatMap(({ rows }) => rows).sort((one, other) => one - other),
  }
}

/** Corners moved by less than this are not worth telling [m]. */
const TOLD_SHIFT_M = 1e-6

function joinNotes(held: readonly GroundPlace[], place: GroundPlace): SurfaceNote[] {
  if (held.length === 1) return []
  const { eastM, northM, levelM } = place
  const at = { eastM, northM }
  return held.flatMap((one): SurfaceNote[] => {
    const shiftM = Math.hypot(one.eastM - eastM, one.northM - northM)
    const moved: SurfaceNote[] =
      shiftM > TOLD_SHIFT_M
        ? [
            {
              kind: 'merged',
              what: `${one.name} lies within 1 mm of ${lower(place.name)} and is joined to it.`,
              at,
            },
          ]
        : []
    if (levelM === undefined || one.levelM === undefined || Math.abs(one.levelM - levelM) <= DISAGREE_M)
      return moved
    const what = `${one.name} has the level ${levelText(one.levelM)}, but ${levelText(levelM)} is used at its place${one.name === place.name ? '' : `, where ${lower(place.name)} lies too`}.`
    return [...moved, { kind: 'disagreement', what, at }]
  })
}

function lower(name: string): string {
  return name.charAt(0).toLowerCase() + name.slice(1)
}
