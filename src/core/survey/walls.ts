import { boxIndex, nearPiece, type BoxIndex, type PlanPoint } from '#core/geometry'
import { cleanLine } from './clean-lines'
import type { Breakline } from './survey.schema'
import { lineName } from './surface-notes'
import type { SurfaceNote } from './surface.types'

/** A corner of a wall: the level of the ground on each side, walking along it. */
export interface WallCorner extends PlanPoint {
  readonly leftM: number
  readonly rightM: number
}

/** A wall, cleaned. */
export interface Wall {
  readonly name: string
  readonly corners: readonly WallCorner[]
  /** Whether it runs back to its first corner. */
  readonly closed: boolean
}

/** A straight piece of a wall. */
export interface WallPiece {
  /** Number of the wall among the walls, and of the piece within it. */
  readonly wall: number
  readonly piece: number
  readonly from: WallCorner
  readonly to: WallCorner
}

/** A place seen from a wall. */
export interface BesideWall {
  readonly on: WallPiece
  /** How far along the piece, 0 to 1. */
  readonly share: number
  /** Distance from the wall's line [m], above 0 on the left. */
  readonly leftwardM: number
}

/**
 * The walls among the breaklines, cleaned.
 *
 * @param breaklines - all lines of the survey
 * @returns the walls in the order of their ids, and what was changed
 */
export function wallsOf(breaklines: readonly Breakline[]): {
  readonly walls: readonly Wall[]
  readonly notes: readonly SurfaceNote[]
} {
  const notes: SurfaceNote[] = []
  const walls = breaklines
    .filter((line) => line.kind === 'wall')
    .sort((one, other) => (one.id < other.id ? -1 : 1))
    .flatMap((line): Wall[] => {
      const clean = cleanLine(line)
      notes.push(...clean.notes)
      const corners = clean.corners.map(({ corner }) => corner)
      return corners.length > 0 ? [{ name: lineName(line), corners, closed: clean.closed }] : []
    })
  return { walls, notes }
}

/**
 * The straight pieces of walls.
 *
 * @param walls - the walls
 * @returns every piece, wall by wall
 */
export function wallPieces(walls: readonly Wall[]): WallPiece[] {
  return walls.flatMap(({ corners, closed }, wall) =>
    corners.flatMap((from, piece): WallPiece[] => {
      const to = corners[piece + 1] ?? (closed ? corners[0] : undefined)
      return to ? [{ wall, piece, from, to }] : []
    }),
  )
}

/**
 * Finds the wall on which a place stands.
 *
 * @param pieces - pieces of walls
 * @param reachM - how far from a wall's line still is on it [m], above 0
 * @returns a function from place to the nearest piece within reach; undefined where there is none
 */
export function onWall(
  pieces: readonly WallPiece[],
  reachM: number,
): (place: PlanPoint) => BesideWall | undefined {
  const index: BoxIndex = boxIndex(pieces.length, (at) => {
    const { from, to } = pieces[at]!
    return {
      westM: Math.min(from.eastM, to.eastM),
      southM: Math.min(from.northM, to.northM),
      eastM: Math.max(from.eastM, to.eastM),
      northM: Math.max(from.northM, to.northM),
    }
  })
  return (place) => {
    let found: (BesideWall & { readonly gapM: number }) | undefined
    index.search(nearPiece(place, place, reachM), (at) => {
      const beside = besidePiece(pieces[at]!, place)
      if (beside.gapM <= reachM && beside.gapM < (found?.gapM ?? Infinity)) found = beside
    })
    return found
  }
}

/**
 * How a place lies to a piece of a wall.
 *
 * @param on - the piece
 * @param place - the place [m]
 * @returns how far along and to which side, and its distance from the piece [m]
 */
export function besidePiece(on: WallPiece, place: PlanPoint): BesideWall & { readonly gapM: number } {
  const { from, to } = on
  const [east, north] = [to.eastM - from.eastM, to.northM - from.northM]
  const [placeEast, placeNorth] = [place.eastM - from.eastM, place.northM - from.northM]
  const lengthM = Math.hypot(east, north)
  const share = Math.min(1, Math.max(0, (east * placeEast + north * placeNorth) / lengthM ** 2))
  return {
    on,
    share,
    leftwardM: (east * placeNorth - north * placeEast) / lengthM,
    gapM: Math.hypot(placeEast - share * east, placeNorth - share * north),
  }
}

/**
 * Levels of the ground on both sides of a wall.
 *
 * @param beside - the place on the wall
 * @returns level on the left and on the right [m]
 */
export function sidesAt(beside: Pick<BesideWall, 'on' | 'share'>) {
  const { share } = beside
  const { from, to } = beside.on
  return {
    leftM: from.leftM + share * (to.leftM - from.leftM),
    rightM: from.rightM + share * (to.rightM - from.rightM),
  }
}
