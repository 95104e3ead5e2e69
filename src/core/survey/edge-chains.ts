import type { PlanPoint } from '#core/geometry'
import { cleanLine } from './clean-lines'
import type { Breakline } from './survey.schema'
import { levelText, lineName } from './surface-notes'
import type { SurfaceNote } from './surface.types'
import { SAME_PLACE_M, WALL_HALF_M } from './tolerances'
import { besidePiece, onWall, sidesAt, wallPieces, type BesideWall, type Wall } from './walls'

/** A corner of an edge line. */
interface EdgeCorner extends PlanPoint {
  /** Its level [m]; undefined when the levels around it must tell. */
  readonly levelM: number | undefined
  /** What it is called in a note. */
  readonly name: string
  /** Whether a note already says that it was put onto a wall. */
  readonly onWall: boolean
}

/** A run of corners of an edge line, joined one to the next. */
export interface EdgeChain {
  /** Name of the line it is part of. */
  readonly line: string
  readonly corners: readonly EdgeCorner[]
}

/**
 * The edge lines among the breaklines, cleaned, and taken to the near side of each wall they run onto.
 *
 * @param breaklines - all lines of the survey
 * @param walls - the walls among them, cleaned
 * @returns the runs of corners in the order of the lines' ids, and what was changed
 */
export function edgeChains(
  breaklines: readonly Breakline[],
  walls: readonly Wall[],
): { readonly chains: readonly EdgeChain[]; readonly notes: readonly SurfaceNote[] } {
  const notes: SurfaceNote[] = []
  const find = onWall(wallPieces(walls), WALL_HALF_M + SAME_PLACE_M)
  const chains = breaklines
    .filter((line) => line.kind !== 'wall')
    .sort((one, other) => (one.id < other.id ? -1 : 1))
    .flatMap((line): EdgeChain[] => {
      const clean = cleanLine(line)
      notes.push(...clean.notes)
      const named = clean.corners.map(({ corner: { eastM, northM, levelM }, at }): EdgeCorner => ({
        eastM,
        northM,
        levelM,
        onWall: false,
        name: `Corner ${at + 1} of ${lineName(line)}`,
      }))
      const [first] = named
      const corners = clean.closed && first ? [...named, first] : named
      const runs = cutAtWalls(corners, find, (corner, beside, side) =>
        notes.push(wallNote(corner, walls[beside.on.wall]!.name, side)),
      )
      return runs.map((run) => ({ line: lineName(line), corners: run }))
    })
  return { chains, notes }
}

type Side = 'left' | 'right'

type Tell = (corner: EdgeCorner, beside: BesideWall, side: readonly Side[]) => void

// A corner on a wall goes to the side its neighbours are on; where they are on both, the line ends there and goes on beyond.
function cutAtWalls(
  corners: readonly EdgeCorner[],
  find: (place: PlanPoint) => BesideWall | undefined,
  tell: Tell,
): EdgeCorner[][] {
  const runs: EdgeCorner[][] = [[]]
  corners.forEach((corner, at) => {
    const beside = find(corner)
    if (!beside) {
      runs.at(-1)!.push(corner)
      return
    }
    const enter = sideOf(beside, corners[at - 1])
    const leave = sideOf(beside, corners[at + 1])
    const sides = [enter, leave].filter((side) => side !== undefined)
    tell(corner, beside, [...new Set(sides)])
    if (enter) runs.at(-1)!.push(taken(corner, beside, enter))
    if (enter && enter === leave) return
    runs.push(leave ? [taken(corner, beside, leave)] : [])
  })
  return runs.filter((run) => run.length > 1)
}

function sideOf({ on }: BesideWall, neighbour: EdgeCorner | undefined): Side | undefined {
  if (!neighbour) return undefined
  const { leftwardM } = besidePiece(on, neighbour)
  if (Math.abs(leftwardM) <= WALL_HALF_M + SAME_PLACE_M) return undefined
  return leftwardM > 0 ? 'left' : 'right'
}

function taken(corner: EdgeCorner, beside: BesideWall, side: Side): EdgeCorner {
  const { from, to } = beside.on
  const [east, north] = [to.eastM - from.eastM, to.northM - from.northM]
  const off = ((side === 'left' ? 1 : -1) * WALL_HALF_M) / Math.hypot(east, north)
  const { leftM, rightM } = sidesAt(beside)
  return {
    name: corner.name,
    onWall: true,
    eastM: from.eastM + beside.share * east - off * north,
    northM: from.northM + beside.share * north + off * east,
    levelM: side === 'left' ? leftM : rightM,
  }
}

function wallNote(corner: EdgeCorner, wall: string, sides: readonly Side[]): SurfaceNote {
  const at = { eastM: corner.eastM, northM: corner.northM }
  if (sides.length === 0)
    return {
      kind: 'left-out',
      what: `${corner.name} lies on the wall ${wall}, and so do its neighbours; the wall’s own levels hold.`,
      at,
    }
  const where = sides.length > 1 ? 'the line is cut there' : `it is taken to the wall’s ${sides[0]} side`
  const own = corner.levelM === undefined ? '' : ` instead of its own ${levelText(corner.levelM)}`
  return {
    kind: 'snapped',
    what: `${corner.name} lies on the wall ${wall}; ${where}, at the wall’s level${own}.`,
    at,
  }
}
