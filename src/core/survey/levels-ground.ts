import { convexHull, ringAreaM2, type LevelPoint, type PlanPoint, type Ring, type Tin } from '#core/geometry'
import type { Outcome, Problem } from '#core/units'
import { edgeChains } from './edge-chains'
import { givenTin, type GivenTin } from './given-faces'
import { givenOutline } from './given-outline'
import { groundPlaces, joinedPlaces } from './ground-places'
import { lineNet } from './line-net'
import { outlierNotes } from './outliers'
import { pointsOnWalls } from './points-on-walls'
import { spotPoints } from './spot-points'
import type { SurfaceNote } from './surface.types'
import type { LevelsSurvey } from './survey.schema'
import type { SurveyedGround } from './surveyed-ground.types'
import { wallsOf, type Wall } from './walls'

/** Points whose spread across is less than this share of their spread along lie in one line [m/m]. */
const LINE_SHARE = 1e-3

/**
 * The ground of spot levels: triangles between them, along the lines that were drawn, or as they came with the survey.
 *
 * @param survey - the levels
 * @returns the ground, or every problem with its points
 */
export function levelsGround(survey: LevelsSurvey): Outcome<SurveyedGround> {
  const { points, faces } = survey
  const short = shapeProblems([...points, ...lineLevels(survey)], points.length)
  if (faces) {
    const given = short.length > 0 ? { ok: false as const, problems: short } : givenTin(survey, faces)
    if (!given.ok) return given
    return { ok: true, value: givenGround(given.value) }
  }
  const lines = survey.breaklines ?? []
  const drawn = wallsOf(lines)
  const walls = pointsOnWalls(points, drawn.walls)
  const spots = spotPoints(points, walls.taken)
  const problems = [...walls.problems, ...spots.problems, ...short]
  if (problems.length > 0) return { ok: false, problems }
  const edges = edgeChains(lines, walls.walls)
  const places = joinedPlaces(groundPlaces(points, spots.points, walls.walls, edges.chains))
  const net = lineNet(places)
  if (net.tin.corners.length === 0) return { ok: false, problems: [inLine(points.length)] }
  const notes = [drawn, walls, spots, edges, places, net].flatMap((step) => step.notes)
  return {
    ok: true,
    value: groundOf(survey, {
      tin: net.tin,
      walls: walls.walls,
      notes: [...notes, ...outlierNotes(points, net)],
    }),
  }
}

interface Made {
  readonly tin: Tin
  readonly walls: readonly Wall[]
  readonly notes: readonly SurfaceNote[]
}

function groundOf(survey: LevelsSurvey, { tin, walls, notes }: Made): SurveyedGround {
  const measured = [...survey.points, ...lineLevels(survey)]
  const outline = convexHull(measured)
  return {
    outline,
    hull: outline,
    gaps: [],
    spacingM: Math.sqrt(ringAreaM2(outline) / survey.points.length),
    ...levelRange(measured),
    tin,
    levelAt: undefined,
    walls,
    notes,
  }
}

// The ground of a file's own triangles: only the points that they use count.
function givenGround({ tin, notes }: GivenTin): SurveyedGround {
  const used = [...new Set(tin.corners)].map((corner) => tin.points[corner]!)
  const extent = givenOutline(tin)
  return {
    ...extent,
    hull: convexHull(used),
    spacingM: Math.sqrt(ringAreaM2(extent.outline) / used.length),
    ...levelRange(used),
    tin,
    levelAt: undefined,
    walls: [],
    notes: [...notes, ...extent.notes],
  }
}

function levelRange(measured: readonly LevelPoint[]) {
  let [highestM, lowestM] = [-Infinity, Infinity]
  for (const { levelM } of measured) {
    highestM = Math.max(highestM, levelM)
    lowestM = Math.min(lowestM, levelM)
  }
  return { highestM, lowestM }
}

// Levels that were measured along lines.
function lineLevels({ breaklines, faces }: LevelsSurvey): LevelPoint[] {
  if (!breaklines || faces) return []
  return breaklines.flatMap((line): LevelPoint[] =>
    line.kind === 'wall'
      ? line.vertices.flatMap(({ leftM, rightM, ...place }) => [
          { ...place, levelM: leftM },
          { ...place, levelM: rightM },
        ])
      : line.vertices.flatMap(({ levelM, ...place }) => (levelM === undefined ? [] : [{ ...place, levelM }])),
  )
}

function shapeProblems(measured: readonly PlanPoint[], count: number): Problem[] {
  if (count < 3) return [tooFew(count)]
  const outline = convexHull(measured)
  const areaM2 = outline.length < 3 ? 0 : ringAreaM2(outline)
  return areaM2 <= LINE_SHARE * longestM(outline) ** 2 ? [inLine(count)] : []
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

function longestM(outline: Ring): number {
  const [first] = outline
  if (!first) return 0
  return outline.reduce(
    (so, corner) => Math.max(so, Math.hypot(corner.eastM - first.eastM, corner.northM - first.northM)),
    0,
  )
}
