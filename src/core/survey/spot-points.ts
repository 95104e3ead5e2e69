import { samePlaces, type LevelPoint } from '#core/geometry'
import type { Problem } from '#core/units'
import type { LevelsSurvey } from './survey.schema'
import { levelText, rowName } from './surface-notes'
import type { SurfaceNote } from './surface.types'
import { SAME_LEVEL_M, SAME_PLACE_M } from './tolerances'

type SpotLevel = LevelsSurvey['points'][number]

/** A measured place, once. */
export interface SpotPoint extends LevelPoint {
  /** Rows that measured it [count], from 0. */
  readonly rows: readonly number[]
}

/** Measured places, each once. */
export interface SpotPoints {
  readonly points: readonly SpotPoint[]
  readonly notes: readonly SurfaceNote[]
  readonly problems: readonly Problem[]
}

/**
 * Measured places with those that were measured twice joined: their mean counts. Two levels that do not agree at one place
 * are a problem, as only the person can tell which holds.
 *
 * @param points - the rows of the survey
 * @param taken - 1 for rows to leave aside
 * @returns the places in the order of their rows
 */
export function spotPoints(points: readonly SpotLevel[], taken: Uint8Array): SpotPoints {
  const rows = [...points.keys()].filter((row) => !taken[row])
  const group = samePlaces(
    rows.map((row) => points[row]!),
    SAME_PLACE_M,
  )
  const members = new Map<number, number[]>()
  rows.forEach((row, at) => {
    const held = members.get(group[at]!)
    if (held) held.push(row)
    else members.set(group[at]!, [row])
  })
  const groups = [...members.values()]
  const joined = groups.filter((held) => held.length > 1)
  return {
    points: groups.map((held) => meanPoint(points, held)),
    problems: joined.flatMap((held) => clash(points, held)),
    notes: joined.map((held) => mergedNote(points, held)),
  }
}

/**
 * The problem of two levels at one place.
 *
 * @param points - the rows of the survey
 * @param before - the first row [count], from 0
 * @param row - the other [count]
 * @returns the problem, with the way to mend it
 */
export function repeatProblem(points: readonly SpotLevel[], before: number, row: number): Problem {
  const [first, point] = [points[before]!, points[row]!]
  return {
    where: `survey.ground.points[${row}]`,
    what: `Rows ${rowName(points, before)} and ${rowName(points, row)} lie at the same place (${point.eastM} m east, ${point.northM} m north) with different levels: ${first.levelM} m and ${point.levelM} m.`,
    mend: 'Take out the wrong row. At a wall or step, draw the line of the wall with its level on each side.',
  }
}

// The lowest and the highest of levels at one place, when they are too far apart to be one.
function clash(points: readonly SpotLevel[], held: readonly number[]): Problem[] {
  const level = (row: number) => points[row]!.levelM
  const lowest = held.reduce((so, row) => (level(row) < level(so) ? row : so))
  const highest = held.reduce((so, row) => (level(row) > level(so) ? row : so))
  if (level(highest) - level(lowest) <= SAME_LEVEL_M) return []
  return [repeatProblem(points, Math.min(lowest, highest), Math.max(lowest, highest))]
}

function mergedNote(points: readonly SpotLevel[], held: readonly number[]): SurfaceNote {
  const names = held.map((row) => rowName(points, row))
  const at = meanPoint(points, held)
  const what = `Rows ${names.slice(0, -1).join(', ')} and ${names.at(-1)} are one place measured ${held.length === 2 ? 'twice' : `${held.length} times`}; their mean is used, ${levelText(at.levelM)}.`
  return { kind: 'merged', what, at: { eastM: at.eastM, northM: at.northM } }
}

// Summed in the order of their size, so that the order of the rows makes no difference.
function meanPoint(points: readonly SpotLevel[], rows: readonly number[]): SpotPoint {
  const only = points[rows[0]!]!
  if (rows.length === 1) return { eastM: only.eastM, northM: only.northM, levelM: only.levelM, rows }
  const mean = (of: (point: SpotLevel) => number) =>
    rows
      .map((row) => of(points[row]!))
      .sort((one, other) => one - other)
      .reduce((sum, value) => sum + value, 0) / rows.length
  return {
    eastM: mean((point) => point.eastM),
    northM: mean((point) => point.northM),
    levelM: mean((point) => point.levelM),
    rows,
  }
}
