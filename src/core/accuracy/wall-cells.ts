import { cellAt, type PlanPoint } from '#core/geometry'
import type { LevelsSurvey, Surface } from '#core/survey'
import { gradientToDeg } from '#core/units'
import type { CellErrors } from './cell-errors.types'

type Wall = Extract<NonNullable<LevelsSurvey['breaklines']>[number], { kind: 'wall' }>
type WallPoint = Wall['vertices'][number]

/**
 * Says of cells at a wall that they are not well known. A cell there is half of upper and half of lower ground, and its
 * slope is that of the step, not of ground one can stand on: the level may be off by half the step, the slope by all of it.
 *
 * @param errors - standard errors of every cell, raised in place
 * @param surface - the ground as cells
 * @param ground - levels and lines
 */
export function markWalls(
  errors: Pick<CellErrors, 'levelSdM' | 'slopeSdDeg'>,
  surface: Surface,
  ground: LevelsSurvey,
): void {
  const walls = (ground.breaklines ?? []).filter((line): line is Wall => line.kind === 'wall')
  for (const { vertices } of walls)
    for (const [at, to] of vertices.entries()) {
      const from = vertices[at - 1]
      if (from) markPiece(errors, surface, from, to)
    }
}

/** Steps along a wall, so that no cell it crosses is passed over [steps in a cell]. */
const STEPS_A_CELL = 2

function markPiece(
  errors: Pick<CellErrors, 'levelSdM' | 'slopeSdDeg'>,
  surface: Surface,
  from: WallPoint,
  to: WallPoint,
): void {
  const { cellM } = surface.frame
  const lengthM = Math.hypot(to.eastM - from.eastM, to.northM - from.northM)
  const steps = Math.max(1, Math.ceil((STEPS_A_CELL * lengthM) / cellM))
  for (let step = 0; step <= steps; step++) {
    const part = step / steps
    const between = (one: number, other: number) => one + part * (other - one)
    const stepM = Math.abs(between(from.leftM - from.rightM, to.leftM - to.rightM))
    const at = { eastM: between(from.eastM, to.eastM), northM: between(from.northM, to.northM) }
    for (const cell of cellsAround(surface, at)) {
      errors.levelSdM[cell] = Math.max(errors.levelSdM[cell]!, stepM / 2)
      errors.slopeSdDeg[cell] = Math.max(errors.slopeSdDeg[cell]!, gradientToDeg(stepM / (2 * cellM)))
    }
  }
}

// The cell at a place and those whose gradient window it lies in.
function cellsAround({ frame, share }: Surface, at: PlanPoint): number[] {
  const steps = [-frame.cellM, 0, frame.cellM]
  return steps
    .flatMap((eastM) =>
      steps.map((northM) => cellAt(frame, { eastM: at.eastM + eastM, northM: at.northM + northM })),
    )
    .filter((cell) => cell !== undefined)
    .filter((cell) => (share[cell] ?? 0) > 0)
}
