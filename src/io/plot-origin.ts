import type { PlanPoint } from '#core/geometry'
import type { GroundSurvey } from '#core/survey'

/** Further from its origin than this, a survey is in some national grid and not in the plot's own frame [m]. */
const FAR_FROM_ORIGIN_M = 20_000

/** The survey in the plot's own frame, and by how much it was moved, if it was. */
export interface Moved {
  readonly ground: GroundSurvey
  readonly shift: PlanPoint | undefined
}

/**
 * Moves coordinates of a national grid to the plot's own origin, by whole metres so that no digit is lost.
 *
 * @param ground - a survey in any frame
 * @returns the survey near its origin; `shift` says what was taken off
 */
export function toPlotOrigin(ground: GroundSurvey): Moved {
  if (ground.kind === 'levels') {
    const shift = shiftOf(ground.points)
    const moved = ground.points.map((point) => ({
      ...point,
      eastM: exact(point.eastM - (shift?.eastM ?? 0)),
      northM: exact(point.northM - (shift?.northM ?? 0)),
    }))
    return { ground: shift ? { ...ground, points: moved } : ground, shift }
  }
  if (ground.kind === 'grid') {
    const shift = shiftOf([{ eastM: ground.westM, northM: ground.southM }])
    return {
      ground: shift
        ? { ...ground, westM: exact(ground.westM - shift.eastM), southM: exact(ground.southM - shift.northM) }
        : ground,
      shift,
    }
  }
  return { ground, shift: undefined }
}

function shiftOf(points: readonly PlanPoint[]): PlanPoint | undefined {
  const [first] = points
  if (!first) return undefined
  const far = Math.max(Math.abs(first.eastM), Math.abs(first.northM)) > FAR_FROM_ORIGIN_M
  return far ? { eastM: Math.floor(first.eastM), northM: Math.floor(first.northM) } : undefined
}

/** Decimals kept of a metre: rounds off only what subtraction left behind. */
const KEPT_DECIMALS = 6

const exact = (metres: number): number => Number(metres.toFixed(KEPT_DECIMALS))
