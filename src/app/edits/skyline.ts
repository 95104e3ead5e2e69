import { wholeCircleDeg, type Outcome } from '#core/units'
import type { Plan } from '#plan'
import { gone, refused } from './refused'
import { withSurvey, without } from './with-survey'

/** A place of the far skyline, as the plan holds it. */
export type FarPlace = NonNullable<Plan['survey']['skyline']>[number]

/** Nearer than this two directions are one [°]. */
const SAME_DEG = 0.005
/** Steepest that the plan's schema takes [°]. */
const STEEPEST_DEG = 85

/** The far skyline of a plan; none for an open horizon. */
export const skylineOf = ({ survey }: Plan): readonly FarPlace[] => survey.skyline ?? []

/** The plan with more places of the far skyline, all in order of direction. */
export function addFarPlaces(plan: Plan, places: readonly FarPlace[]): Outcome<Plan> {
  return withSkyline(plan, [...skylineOf(plan), ...places])
}

/** The plan with one place of the far skyline changed. */
export function setFarPlace(plan: Plan, at: number, change: Partial<FarPlace>): Outcome<Plan> {
  const before = skylineOf(plan)[at]
  if (!before) return gone('far skyline')
  return withSkyline(plan, [...without(skylineOf(plan), at), { ...before, ...change }])
}

/** The plan without one place of the far skyline; without the last of them the horizon is open. */
export function removeFarPlace(plan: Plan, at: number): Outcome<Plan> {
  const left = without(skylineOf(plan), at)
  return left.length > 0 ? withSkyline(plan, left) : clearSkyline(plan)
}

/** The plan with an open horizon. */
export const clearSkyline = (plan: Plan): Outcome<Plan> => withSurvey(plan, { skyline: undefined })

function withSkyline(plan: Plan, places: readonly FarPlace[]): Outcome<Plan> {
  const skyline = places.map(settled).sort((one, other) => one.azimuthDeg - other.azimuthDeg)
  const twice = skyline.find(({ azimuthDeg }, at) => {
    const next = skyline[at + 1]
    return next && next.azimuthDeg - azimuthDeg < SAME_DEG
  })
  if (twice)
    return refused(
      'far skyline',
      `${twice.azimuthDeg}° is given twice.`,
      'Change the height of the one that is there, or take it out first.',
    )
  const steep = skyline.find(({ angleDeg }) => !(angleDeg >= 0 && angleDeg <= STEEPEST_DEG))
  if (steep)
    return refused(
      'far skyline',
      `A height of ${steep.angleDeg}° is none that far hills have.`,
      `Give 0 (open, or lower than you) to ${STEEPEST_DEG}°.`,
    )
  return withSurvey(plan, { skyline })
}

/** Directions lie on the circle from north, to the hundredth. */
const settled = ({ azimuthDeg, angleDeg }: FarPlace): FarPlace => ({
  azimuthDeg: wholeCircleDeg(Math.round(wholeCircleDeg(azimuthDeg) * 100) / 100),
  angleDeg,
})
