import { cellAt, pointInRing, sides, type PlanPoint, type Ring } from '#core/geometry'
import type { Surface } from '#core/survey'

/** Pieces shorter than this are left out [m]: rounding. */
const LEAST_PIECE_M = 1e-9

type Line = readonly PlanPoint[]

/**
 * The parts of some lines that lie inside the boundary and outside holes.
 *
 * @param surface - the ground
 * @param lines - the lines [m]
 * @returns the parts inside [m]
 */
export function clipToPlot(surface: Surface, lines: readonly Line[]): readonly Line[] {
  const walls = [surface.boundary, ...surface.holes].flatMap((ring) => sides(ring))
  return lines.flatMap((line) => partsInside(surface, line, walls)).filter(isLong)
}

const isOnPlot = ({ boundary, holes }: Surface, place: PlanPoint): boolean =>
  pointInRing(place, boundary) && !holes.some((hole: Ring) => pointInRing(place, hole))

const isLong = (line: Line): boolean =>
  line.some(({ eastM, northM }, at) => {
    const before = line[at - 1]
    return before !== undefined && Math.hypot(eastM - before.eastM, northM - before.northM) > LEAST_PIECE_M
  })

type Wall = readonly [PlanPoint, PlanPoint]

function partsInside(surface: Surface, line: Line, walls: readonly Wall[]): PlanPoint[][] {
  const parts: PlanPoint[][] = []
  let open: PlanPoint[] | undefined
  for (let at = 1; at < line.length; at++) {
    const [from, to] = [line[at - 1]!, line[at]!]
    const deep = isDeepInside(surface, from, to)
    const cuts = deep ? [0, 1] : cutsOf(from, to, walls)
    for (let piece = 1; piece < cuts.length; piece++) {
      const [start, end] = [between(from, to, cuts[piece - 1]!), between(from, to, cuts[piece]!)]
      if (!deep && !isOnPlot(surface, between(start, end, 0.5))) open = undefined
      else if (open) open.push(end)
      else parts.push((open = [start, end]))
    }
  }
  return rejoined(parts)
}

// A piece no longer than a cell, with every cell it can touch wholly in the plot, needs no cutting.
function isDeepInside({ frame, share }: Surface, from: PlanPoint, to: PlanPoint): boolean {
  const corners = [from, to, { ...from, eastM: to.eastM }, { ...from, northM: to.northM }]
  return corners.every((corner) => {
    const cell = cellAt(frame, corner)
    return cell !== undefined && share[cell] === 1
  })
}

// A closed line that begins inside comes out in two parts with one end in common.
function rejoined(parts: PlanPoint[][]): PlanPoint[][] {
  const [first, last] = [parts[0], parts.at(-1)]
  if (!first || !last || first === last || !isSame(first[0], last.at(-1))) return parts
  return [[...last, ...first.slice(1)], ...parts.slice(1, -1)]
}

const isSame = (one: PlanPoint | undefined, other: PlanPoint | undefined): boolean =>
  one !== undefined && one.eastM === other?.eastM && one.northM === other.northM

// Shares of a straight piece at which it crosses a side, with its two ends.
function cutsOf(from: PlanPoint, to: PlanPoint, walls: readonly Wall[]): number[] {
  const cuts = [0, 1]
  const [east, north] = [to.eastM - from.eastM, to.northM - from.northM]
  for (const [start, end] of walls) {
    const here = east * (start.northM - from.northM) - north * (start.eastM - from.eastM)
    const there = east * (end.northM - from.northM) - north * (end.eastM - from.eastM)
    if (here >= 0 === there >= 0) continue
    const at = between(start, end, here / (here - there))
    const square = east * east + north * north
    const share = (east * (at.eastM - from.eastM) + north * (at.northM - from.northM)) / square
    if (share > 0 && share < 1) cuts.push(share)
  }
  return cuts.sort((one, other) => one - other)
}

function between(from: PlanPoint, to: PlanPoint, share: number): PlanPoint {
  if (share === 0) return from
  if (share === 1) return to
  return {
    eastM: from.eastM + share * (to.eastM - from.eastM),
    northM: from.northM + share * (to.northM - from.northM),
  }
}
