import type { LevelsSurvey } from '#core/survey'
import type { Outcome } from '#core/units'
import type { Plan } from '#plan'
import { gone, refused } from './refused'
import { changedAt, without, withSurvey } from './with-survey'

/** A spot level of a survey. */
export type SpotLevel = LevelsSurvey['points'][number]

/** Two levels nearer than this are one place [m]. */
const ONE_PLACE_M = 0.005

/** What a level is called: its mark in the field book, or the number of its row. */
export const levelName = (level: SpotLevel | undefined, at: number): string => level?.mark || String(at + 1)

/**
 * The plan with a level changed. A level that moves in plan has its triangles joined anew.
 *
 * @param plan - a plan whose ground is spot levels
 * @param at - its row, from 0
 * @param change - what is changed of it
 * @returns the plan, or why not
 */
export function setLevel(plan: Plan, at: number, change: Partial<SpotLevel>): Outcome<Plan> {
  const { ground } = plan.survey
  if (ground.kind !== 'levels') return noLevels
  const before = ground.points[at]
  if (!before) return gone(`level ${at + 1}`)
  const level = { ...before, ...change }
  const moved = level.eastM !== before.eastM || level.northM !== before.northM
  const same = moved ? sameplace(ground, level, at) : undefined
  if (same) return same
  const points = changedAt(ground.points, at, level)
  return withSurvey(plan, { ground: moved ? joinedAnew({ ...ground, points }) : { ...ground, points } })
}

/** The plan with one more level, at the end of the list. */
export function addLevel(plan: Plan, level: SpotLevel): Outcome<Plan> {
  const { ground } = plan.survey
  if (ground.kind !== 'levels') return noLevels
  return (
    sameplace(ground, level, ground.points.length) ??
    withSurvey(plan, { ground: joinedAnew({ ...ground, points: [...ground.points, level] }) })
  )
}

/** The plan without a level; the rows after it move up by one. */
export function removeLevel(plan: Plan, at: number): Outcome<Plan> {
  const { ground } = plan.survey
  if (ground.kind !== 'levels') return noLevels
  if (!ground.points[at]) return gone(`level ${at + 1}`)
  return withSurvey(plan, { ground: joinedAnew({ ...ground, points: without(ground.points, at) }) })
}

const noLevels = refused(
  'levels',
  'This ground was not measured as spot levels.',
  'Turn it into spot levels on the Levels page first.',
)

/** Triangles that came with the survey name its rows and places, so they go when either changes. */
function joinedAnew({ faces, ...ground }: LevelsSurvey): LevelsSurvey {
  return faces ? { ...ground } : ground
}

function sameplace(ground: LevelsSurvey, level: SpotLevel, at: number): Outcome<never> | undefined {
  const other = ground.points.findIndex(
    ({ eastM, northM }, index) =>
      index !== at && Math.hypot(eastM - level.eastM, northM - level.northM) < ONE_PLACE_M,
  )
  if (other === -1) return undefined
  return refused(
    `level ${levelName(level, at)}`,
    `Level ${levelName(ground.points[other], other)} stands there already.`,
    'Move it a little, or change the level that is there.',
  )
}
