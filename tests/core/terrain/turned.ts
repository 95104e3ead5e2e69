import type { PlanPoint } from '#core/geometry'
import type { Surface } from '#core/survey'
import { surfaceOf } from './grids'

/** Ways to turn or mirror a plot about its origin, by name: what becomes of a place. */
export const turnings: readonly (readonly [string, (place: PlanPoint) => PlanPoint])[] = [
  ['turned a quarter', ({ eastM, northM }) => ({ eastM: -northM, northM: eastM })],
  ['turned half round', ({ eastM, northM }) => ({ eastM: -eastM, northM: -northM })],
  ['mirrored east to west', ({ eastM, northM }) => ({ eastM: -eastM, northM })],
  ['mirrored in the diagonal', ({ eastM, northM }) => ({ eastM: northM, northM: eastM })],
]

/** A square plot of 1 m cells with a level formula. */
export const squarePlot = (side: number, levelOf: (place: PlanPoint) => number | null): Surface =>
  surfaceOf({ columns: side, rows: side, cellM: 1 }, (eastM, northM) => levelOf({ eastM, northM }))

/** The same plot with every place turned. Each of the four turnings undone four times over is the turning itself. */
export const turnedPlot = (
  side: number,
  levelOf: (place: PlanPoint) => number | null,
  turn: (place: PlanPoint) => PlanPoint,
): Surface => squarePlot(side, (place) => levelOf(undo(turn, place)))

function undo(turn: (place: PlanPoint) => PlanPoint, place: PlanPoint): PlanPoint {
  // Each turning comes back to itself after 1, 2 or 4 times; three times undoes any of them.
  return turn(turn(turn(place)))
}

/** A hilly formula without symmetry: a slope with a hollow, a knoll and a gully. */
export const hilly = ({ eastM, northM }: PlanPoint): number =>
  10 +
  0.18 * northM -
  0.05 * eastM -
  1.7 * Math.exp(-((eastM - 4) ** 2 + (northM + 3) ** 2) / 12) +
  1.1 * Math.exp(-((eastM + 6) ** 2 + (northM - 5) ** 2) / 9) +
  0.3 * Math.sin(eastM / 3.1) * Math.cos(northM / 4.3)
