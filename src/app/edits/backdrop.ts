import type { PlanPoint } from '#core/geometry'
import type { Outcome } from '#core/units'
import type { Backdrop, Plan } from '#plan'
import { refused } from './refused'
import { withSurvey } from './with-survey'

/** A place on a picture, from its top left corner. */
export type Pixel = Backdrop['one']

/** How a picture lies on the plot. */
export interface Placement {
  /** Metres that a pixel covers [m]. */
  readonly mPerPx: number
  /** Direction that the top of the picture points, clockwise from true north, 0 to below 360 [°]. */
  readonly topDeg: number
}

/** Points marked nearer than this cannot scale a picture [px]. */
const LEAST_APART_PX = 4

/** Scale and turn of a picture that follow from its two marked points. */
export function placementOf({ one, other, apartM, bearingDeg }: Scaled): Placement {
  return {
    mPerPx: apartM / apartPx(one, other),
    topDeg: turned(bearingDeg - directionOnPicture(one, other)),
  }
}

/** What scales and turns a picture. */
type Scaled = Pick<Backdrop, 'one' | 'other' | 'apartM' | 'bearingDeg'>

/**
 * Where a place on the picture lies on the plot.
 *
 * @param backdrop - the picture with its two points
 * @param pixel - the place on it [px]
 * @returns the place [m]
 */
export function pictureToPlot(backdrop: Scaled & Pick<Backdrop, 'at'>, { xPx, yPx }: Pixel): PlanPoint {
  const { mPerPx, topDeg } = placementOf(backdrop)
  const rightM = (xPx - backdrop.one.xPx) * mPerPx
  const upM = (backdrop.one.yPx - yPx) * mPerPx
  const top = (topDeg * Math.PI) / 180
  return {
    eastM: backdrop.at.eastM + rightM * Math.cos(top) + upM * Math.sin(top),
    northM: backdrop.at.northM - rightM * Math.sin(top) + upM * Math.cos(top),
  }
}

/** Direction from the first marked point to the second when north on the picture points so, clockwise from its top. */
export function bearingFromNorth(one: Pixel, other: Pixel, northOnPictureDeg: number): number {
  return turned(directionOnPicture(one, other) - northOnPictureDeg)
}

/** Where north points on the picture, clockwise from its top, 0 to below 360 [°]. */
export const northOnPictureDeg = (backdrop: Scaled): number => turned(-placementOf(backdrop).topDeg)

/** The plan with a picture under it. */
export function layBackdrop(plan: Plan, backdrop: Backdrop): Outcome<Plan> {
  return apartPx(backdrop.one, backdrop.other) < LEAST_APART_PX
    ? refused(
        'backdrop',
        'The two points lie in one place on the picture.',
        'Mark two that are well apart: the further, the truer the scale.',
      )
    : withSurvey(plan, { backdrop })
}

/** The plan without a picture. */
export const removeBackdrop = (plan: Plan): Outcome<Plan> => withSurvey(plan, { backdrop: undefined })

/** Where the two marked points lie on the plot; moving the second one turns the picture about the first. */
export function backdropEnds(backdrop: Backdrop): readonly [PlanPoint, PlanPoint] {
  return [backdrop.at, pictureToPlot(backdrop, backdrop.other)]
}

/** The picture after its marked points were dragged on the plan: the first moves it, the second only turns it. */
export function draggedBackdrop(backdrop: Backdrop, [at, other]: readonly PlanPoint[]): Backdrop {
  const [before] = backdropEnds(backdrop)
  if (!at || !other) return backdrop
  if (at.eastM !== before.eastM || at.northM !== before.northM)
    return { ...backdrop, at: { eastM: at.eastM, northM: at.northM } }
  const bearing = (Math.atan2(other.eastM - at.eastM, other.northM - at.northM) * 180) / Math.PI
  return { ...backdrop, bearingDeg: Math.round(turned(bearing) * 100) / 100 }
}

const apartPx = (one: Pixel, other: Pixel): number => Math.hypot(other.xPx - one.xPx, other.yPx - one.yPx)

/** Direction on the picture, clockwise from its top [°]. */
const directionOnPicture = (one: Pixel, other: Pixel): number =>
  (Math.atan2(other.xPx - one.xPx, one.yPx - other.yPx) * 180) / Math.PI

const turned = (deg: number): number => ((deg % 360) + 360) % 360
