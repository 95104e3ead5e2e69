import { cellAt, cellCentre, type PlanPoint } from '#core/geometry'
import type { Surface } from '#core/survey'

/**
 * Level of the ground under a place, read between the four cell centres around it that are on the plot.
 *
 * @param surface - the ground
 * @param place - where [m]
 * @returns level to the centimetre [m]; undefined off the plot
 */
export function levelOn(surface: Surface, place: PlanPoint): number | undefined {
  const { frame } = surface
  const own = cellAt(frame, place)
  if (own === undefined || !surface.share[own]) return undefined
  let [sum, weights] = [0, 0]
  for (const cell of cellsAround(surface, own)) {
    const centre = cellCentre(frame, cell)
    const weight =
      Math.max(0, 1 - Math.abs(place.eastM - centre.eastM) / frame.cellM) *
      Math.max(0, 1 - Math.abs(place.northM - centre.northM) / frame.cellM)
    sum += weight * (surface.levelM[cell] ?? 0)
    weights += weight
  }
  return Math.round((weights > 0 ? sum / weights : (surface.levelM[own] ?? 0)) * 100) / 100
}

/** The cell and its neighbours that are on the plot. */
function cellsAround({ frame, share }: Surface, own: number): number[] {
  const [row, column] = [Math.floor(own / frame.columns), own % frame.columns]
  const steps = [-1, 0, 1]
  return steps
    .flatMap((down) => steps.map((across) => [row + down, column + across] as const))
    .filter(([r, c]) => r >= 0 && c >= 0 && r < frame.rows && c < frame.columns)
    .map(([r, c]) => r * frame.columns + c)
    .filter((cell) => (share[cell] ?? 0) > 0)
}
