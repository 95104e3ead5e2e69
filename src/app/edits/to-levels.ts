import { cellCentre, type LevelPoint } from '#core/geometry'
import type { BankSurvey, Surface } from '#core/survey'
import type { Outcome } from '#core/units'
import type { Plan } from '#plan'
import { refused } from './refused'
import { withSurvey } from './with-survey'

/** Most cells of a grid that become levels to be changed one by one [count]; own judgement. */
const MOST_LEVELS = 5000

/**
 * The same ground as spot levels, so that single levels and lines can be changed. The outline stays.
 *
 * @param plan - a plan of a bank, a profile or a grid
 * @param surface - its surface
 * @returns the plan, or why it has too many levels
 */
export function toLevels(plan: Plan, surface: Surface): Outcome<Plan> {
  const points = surface.tin?.points ?? centresOf(surface)
  if (points.length > MOST_LEVELS)
    return refused(
      'grid',
      `It has ${points.length} cells on the plot: too many to change one by one.`,
      `Choose larger cells, at most ${MOST_LEVELS} on the plot, or open a thinner survey.`,
    )
  const levels = points.map(({ eastM, northM, levelM }) => ({
    eastM: millimetres(eastM),
    northM: millimetres(northM),
    levelM: millimetres(levelM),
  }))
  return withSurvey(plan, {
    ground: { kind: 'levels', points: levels },
    boundary: plan.survey.boundary ?? [...surface.boundary],
  })
}

/** The same bank as a profile, ready for levels in between. */
export function toProfile(plan: Plan, { lengthM, riseM, facesDeg, widthM }: BankSurvey): Outcome<Plan> {
  const stations = [
    { distanceM: 0, levelM: riseM },
    { distanceM: lengthM, levelM: 0 },
  ]
  return withSurvey(plan, { ground: { kind: 'profile', distancesAre: 'slope', stations, facesDeg, widthM } })
}

function centresOf({ frame, share, levelM }: Surface): LevelPoint[] {
  const points: LevelPoint[] = []
  for (const [cell, part] of share.entries())
    if (part > 0) points.push({ ...cellCentre(frame, cell), levelM: levelM[cell] ?? 0 })
  return points
}

const millimetres = (metres: number): number => Math.round(metres * 1000) / 1000
