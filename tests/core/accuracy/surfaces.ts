import { accuracyOf, type Accuracy, type MeasuringErrors } from '#core/accuracy'
import { surfaceFrom, type GroundSurvey, type LevelsSurvey, type Surface } from '#core/survey'
import { terrainOf, type Terrain } from '#core/terrain'

/** The surface of a survey that must give one. */
export function surfaceOf(ground: GroundSurvey, cellM: number): Surface {
  const outcome = surfaceFrom(ground, { cellM })
  if (!outcome.ok) throw new Error(outcome.problems.map(({ what }) => what).join(' '))
  return outcome.value
}

/** Errors of independent levels in known places. */
export function errorsOf(levelSdM: number, planSdM = 1e-9): MeasuringErrors {
  return {
    levelSdM,
    levelSdPerM: 0,
    angleSdDeg: undefined,
    chained: false,
    planSdM,
    methodId: undefined,
    assumed: false,
  }
}

export interface Known {
  readonly surface: Surface
  readonly terrain: Terrain
  readonly accuracy: Accuracy
}

/** A survey's surface, slopes and errors. */
export function known(ground: GroundSurvey, cellM: number, errors: MeasuringErrors): Known {
  const surface = surfaceOf(ground, cellM)
  const terrain = terrainOf(surface)
  return { surface, terrain, accuracy: accuracyOf(surface, terrain, ground, errors) }
}

/** Spot levels from rows of east, north and level [m]. */
export const levels = (...rows: readonly (readonly [number, number, number])[]): LevelsSurvey => ({
  kind: 'levels',
  points: rows.map(([eastM, northM, levelM]) => ({ eastM, northM, levelM })),
})

/** Cells wholly inside the plot, all eight around them too. */
export function innerCells({ frame, share }: Surface): number[] {
  return [...share.keys()].filter((cell) => {
    const column = cell % frame.columns
    const row = Math.floor(cell / frame.columns)
    if (column === 0 || row === 0 || column === frame.columns - 1 || row === frame.rows - 1) return false
    const around = [-1, 0, 1].flatMap((down) =>
      [-1, 0, 1].map((right) => cell + down * frame.columns + right),
    )
    return around.every((other) => share[other]! > 0)
  })
}
