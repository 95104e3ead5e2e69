import type { Problem } from '#core/units'
import { repeatProblem } from './spot-points'
import type { LevelsSurvey } from './survey.schema'
import { levelText, rowName } from './surface-notes'
import type { SurfaceNote } from './surface.types'
import { SAME_LEVEL_M, SAME_PLACE_M, WALL_HALF_M } from './tolerances'
import {
  onWall,
  sidesAt,
  wallPieces,
  type BesideWall,
  type Wall,
  type WallCorner,
  type WallPiece,
} from './walls'

/** A level on a wall belongs to a side from which it differs by at most this share of the step; own judgement [m/m]. */
const STEP_SHARE = 0.25

/** A level that differs no more than this from a side belongs to it, however low the wall [m]; own judgement. */
const LEAST_FIT_M = 0.05

type SpotLevel = LevelsSurvey['points'][number]

/** Walls that know the levels measured on them. */
export interface MeasuredWalls {
  readonly walls: readonly Wall[]
  /** 1 for each row that went into a wall or was left out because of one. */
  readonly taken: Uint8Array
  readonly notes: readonly SurfaceNote[]
  readonly problems: readonly Problem[]
}

/**
 * Gives the levels measured on the line of a wall to the side they fit.
 *
 * @param points - the rows of the survey
 * @param walls - the walls
 * @returns the walls with a corner at each such level, and the rows that are spoken for
 */
export function pointsOnWalls(points: readonly SpotLevel[], walls: readonly Wall[]): MeasuredWalls {
  const taken = new Uint8Array(points.length)
  const pieces = wallPieces(walls)
  if (pieces.length === 0) return { walls, taken, notes: [], problems: [] }
  const notes: SurfaceNote[] = []
  const find = onWall(pieces, WALL_HALF_M + SAME_PLACE_M)
  const knots = new Map<WallPiece, Knot[]>()
  points.forEach((point, row) => {
    const beside = find(point)
    if (!beside) return
    taken[row] = 1
    const side = sideOf(point.levelM, beside)
    notes.push(wallNote({ points, row }, beside, side, walls[beside.on.wall]!.name))
    if (!side) return
    const knot = { row, share: beside.share, side, levelM: point.levelM }
    const held = knots.get(beside.on)
    if (held) held.push(knot)
    else knots.set(beside.on, [knot])
  })
  const problems = [...knots].flatMap(([on, held]) => clashes(points, held, lengthM(on)))
  return { walls: walls.map((wall, at) => withKnots(wall, at, knots)), taken, notes, problems }
}

type Side = 'left' | 'right' | 'both'

/** A level measured on a piece of a wall. */
interface Knot {
  readonly row: number
  readonly share: number
  readonly side: Side
  readonly levelM: number
}

function sideOf(levelM: number, beside: BesideWall): Side | undefined {
  const { leftM, rightM } = sidesAt(beside)
  const [left, right] = [Math.abs(levelM - leftM), Math.abs(levelM - rightM)]
  const stepM = Math.abs(leftM - rightM)
  if (Math.min(left, right) > Math.max(LEAST_FIT_M, STEP_SHARE * stepM)) return undefined
  if (stepM <= SAME_LEVEL_M) return 'both'
  return left < right ? 'left' : 'right'
}

function wallNote(
  { points, row }: { readonly points: readonly SpotLevel[]; readonly row: number },
  beside: BesideWall,
  side: Side | undefined,
  name: string,
): SurfaceNote {
  const start = `Row ${rowName(points, row)} lies on the wall ${name}`
  const at = points[row]
  if (side) {
    const sides = side === 'both' ? 'both sides' : `the ${side} side`
    return { kind: 'snapped', what: `${start} and is taken as the level of ${sides}.`, at }
  }
  const { leftM, rightM } = sidesAt(beside)
  const what = `${start} but its level of ${levelText(at?.levelM ?? 0)} fits neither side (${levelText(leftM)} on the left, ${levelText(rightM)} on the right); it is left out.`
  return { kind: 'left-out', what, at }
}

// Levels of one side at one place that do not agree.
function clashes(points: readonly SpotLevel[], held: readonly Knot[], pieceM: number): Problem[] {
  const inOrder = [...held].sort(
    (one, other) => one.side.localeCompare(other.side) || one.share - other.share || one.row - other.row,
  )
  return inOrder.flatMap((knot, at) => {
    const before = inOrder[at - 1]
    const apart = !before || before.side !== knot.side || (knot.share - before.share) * pieceM > SAME_PLACE_M
    if (apart || Math.abs(before.levelM - knot.levelM) <= SAME_LEVEL_M) return []
    return [repeatProblem(points, Math.min(before.row, knot.row), Math.max(before.row, knot.row))]
  })
}

function withKnots(wall: Wall, at: number, knots: ReadonlyMap<WallPiece, readonly Knot[]>): Wall {
  const byPiece = new Map([...knots].filter(([on]) => on.wall === at).map(([on, held]) => [on.piece, held]))
  if (byPiece.size === 0) return wall
  const corners = wall.corners.flatMap((from, piece): WallCorner[] => {
    const held = byPiece.get(piece)
    const to = wall.corners[piece + 1] ?? wall.corners[0]
    return held && to ? [from, ...between(from, to, held)] : [from]
  })
  return { ...wall, corners }
}

// New corners of a piece; its own two corners keep the levels they were given.
function between(from: WallCorner, to: WallCorner, held: readonly Knot[]): WallCorner[] {
  const length = lengthM({ from, to })
  const inner = held
    .filter(({ share }) => share * length > SAME_PLACE_M && (1 - share) * length > SAME_PLACE_M)
    .sort((one, other) => one.share - other.share || one.levelM - other.levelM)
  const profile = (side: 'left' | 'right', fromM: number, toM: number) => [
    { share: 0, levelM: fromM },
    ...inner.filter((knot) => knot.side === side || knot.side === 'both'),
    { share: 1, levelM: toM },
  ]
  const left = profile('left', from.leftM, to.leftM)
  const right = profile('right', from.rightM, to.rightM)
  const places = inner.filter(
    ({ share }, at) => at === 0 || (share - inner[at - 1]!.share) * length > SAME_PLACE_M,
  )
  return places.map(({ share }) => ({
    eastM: from.eastM + share * (to.eastM - from.eastM),
    northM: from.northM + share * (to.northM - from.northM),
    leftM: levelAt(left, share),
    rightM: levelAt(right, share),
  }))
}

function levelAt(
  profile: readonly { readonly share: number; readonly levelM: number }[],
  share: number,
): number {
  const after = profile.findIndex((knot) => knot.share >= share)
  const [one, other] = [profile[after - 1] ?? profile[0]!, profile[after] ?? profile.at(-1)!]
  if (other.share === one.share) return other.levelM
  return one.levelM + ((share - one.share) / (other.share - one.share)) * (other.levelM - one.levelM)
}

function lengthM({ from, to }: { readonly from: WallCorner; readonly to: WallCorner }): number {
  return Math.hypot(to.eastM - from.eastM, to.northM - from.northM)
}
