import type { PlanPoint } from '#core/geometry'
import { holeProblems, type GroundSurvey } from '#core/survey'
import type { Problem } from '#core/units'
import type { Plan } from './plan.schema'
import { twice } from './used-twice'

type Survey = Plan['survey']
type Profile = Extract<GroundSurvey, { kind: 'profile' }>
type Levels = Extract<GroundSurvey, { kind: 'levels' }>

/** What the survey's schema cannot see: names used twice, rows that are not there, corners at one place. */
export function surveyProblems(survey: Survey): Problem[] {
  const { ground } = survey
  return [
    ...twice(survey.obstacles, 'survey › obstacles', 'obstacle'),
    ...twice(survey.beyond ?? [], 'survey › beyond', 'stretch'),
    ...twice(survey.viewpoints ?? [], 'survey › viewpoints', 'viewpoint'),
    ...twice(survey.sections ?? [], 'survey › sections', 'section'),
    ...twice(survey.books ?? [], 'survey › books', 'field book'),
    ...(ground.kind === 'profile' ? profileOrder(ground) : []),
    ...(ground.kind === 'levels' ? levelsProblems(ground) : []),
    ...(survey.boundary ? holeProblems(survey.holes ?? [], survey.boundary).map(inPlan) : []),
  ]
}

// Holes name their place as the core does; a plan's problems name the row.
function inPlan({ where, what, mend }: Problem): Problem {
  const row = /\[(\d+)\]/.exec(where)?.[1] ?? '0'
  return { where: `plan › survey › holes, row ${Number(row) + 1}`, what, mend }
}

function profileOrder({ stations }: Profile): Problem[] {
  return stations.flatMap((station, index) => {
    const before = stations[index - 1]
    return before && station.distanceM <= before.distanceM
      ? [
          {
            where: `plan › survey › ground › stations, row ${index + 1}`,
            what: `The distance ${station.distanceM} m does not go on from ${before.distanceM} m.`,
            mend: 'Order the stations from the top edge down, each further than the last.',
          },
        ]
      : []
  })
}

function levelsProblems({ points, breaklines, faces }: Levels): Problem[] {
  const lines = breaklines ?? []
  const stray = (faces ?? []).findIndex((face) => face.some((row) => row >= points.length))
  const strayRow: Problem[] =
    stray < 0
      ? []
      : [
          {
            where: `plan › survey › ground › faces, row ${stray + 1}`,
            what: `The triangle names a row beyond the survey’s ${points.length} levels.`,
            mend: 'Load the survey again, or take its triangles out.',
          },
        ]
  return [...twice(lines, 'survey › ground › breaklines', 'line'), ...lines.flatMap(lengthless), ...strayRow]
}

/** Corners of a line nearer than this to all others are one place [m]. */
const SAME_PLACE_M = 0.001

function lengthless(line: NonNullable<Levels['breaklines']>[number], index: number): Problem[] {
  const [first, ...others]: readonly PlanPoint[] = line.vertices
  if (
    !first ||
    others.some((one) => Math.hypot(one.eastM - first.eastM, one.northM - first.northM) > SAME_PLACE_M)
  )
    return []
  return [
    {
      where: `plan › survey › ground › breaklines, row ${index + 1}`,
      what: `All corners of the line “${line.name ?? line.id}” lie at one place.`,
      mend: 'Draw it through at least two places, or take it out.',
    },
  ]
}
