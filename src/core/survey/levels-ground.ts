import { convexHull, ringAreaM2, triangulate } from '#core/geometry'
import type { Outcome, Problem } from '#core/units'
import type { LevelsSurvey } from './survey.schema'
import type { SurveyedGround } from './surveyed-ground.types'

/** Points closer than this are one point measured twice [m]. */
const SAME_PLACE_M = 0.001

/** Levels closer than this agree [m]. */
const SAME_LEVEL_M = 0.005

/** Points whose spread across is less than this share of their spread along lie in one line [m/m]. */
const LINE_SHARE = 1e-3

type SpotLevel = LevelsSurvey['points'][number]

/**
 * The ground of spot levels: triangles between them.
 *
 * @param survey - the levels
 * @returns the ground, or every problem with its points
 */
export function levelsGround(survey: LevelsSurvey): Outcome<SurveyedGround> {
  const { points } = survey
  const problems = repeatProblems(points)
  const outline = convexHull(points)
  const areaM2 = outline.length < 3 ? 0 : ringAreaM2(outline)
  if (points.length < 3) problems.push(tooFew(points.length))
  else if (areaM2 <= LINE_SHARE * longestM(outline) ** 2) problems.push(inLine(points.length))
  if (problems.length > 0) return { ok: false, problems }
  const levels = points.map((point) => point.levelM)
  return {
    ok: true,
    value: {
      outline,
      spacingM: Math.sqrt(areaM2 / points.length),
      highestM: levels.reduce((so, level) => Math.max(so, level)),
      lowestM: levels.reduce((so, level) => Math.min(so, level)),
      tin: triangulate(points),
      levelAt: undefined,
    },
  }
}

// Two levels at one place: which of them holds? Only the person can tell.
function repeatProblems(points: readonly SpotLevel[]): Problem[] {
  const seen = new Map<string, number>()
  const problems: Problem[] = []
  points.forEach((point, row) => {
    const key = `${Math.round(point.eastM / SAME_PLACE_M)} ${Math.round(point.northM / SAME_PLACE_M)}`
    const before = seen.get(key)
    const other = before === undefined ? undefined : points[before]
    if (before === undefined || !other) seen.set(key, row)
    else if (Math.abs(other.levelM - point.levelM) > SAME_LEVEL_M)
      problems.push({
        where: `survey.ground.points[${row}]`,
        what: `Rows ${nameOf(points, before)} and ${nameOf(points, row)} lie at the same place (${point.eastM} m east, ${point.northM} m north) with different levels: ${other.levelM} m and ${point.levelM} m.`,
        mend: 'Take out the wrong row. At a wall or step, move the lower point a little to the foot side.',
      })
  })
  return problems
}

function nameOf(points: readonly SpotLevel[], row: number): string {
  const mark = points[row]?.mark
  return mark ? `${row + 1} (${mark})` : `${row + 1}`
}

function tooFew(count: number): Problem {
  return {
    where: 'survey.ground.points',
    what: `The survey has ${count} levels; a surface needs at least 3.`,
    mend: 'Add levels at the corners of the plot.',
  }
}

function inLine(count: number): Problem {
  return {
    where: 'survey.ground.points',
    what: `All ${count} points lie in one line, so nothing is known of the ground beside it.`,
    mend: 'Add levels to both sides, or enter the line as a profile.',
  }
}

function longestM(outline: readonly { eastM: number; northM: number }[]): number {
  const [first] = outline
  if (!first) return 0
  return outline.reduce(
    (so, corner) => Math.max(so, Math.hypot(corner.eastM - first.eastM, corner.northM - first.northM)),
    0,
  )
}
