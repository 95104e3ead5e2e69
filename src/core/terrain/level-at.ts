import { cellCentre, type PlanPoint } from '#core/geometry'
import type { Surface } from '#core/survey'
import type { Gradients } from './gradients'

/**
 * Level of the ground at any place of a cell: between four cell centres, or on the cell's own slope where one of them
 * lies outside the plot.
 *
 * @param surface - the ground
 * @param slopes - gradients of every cell [m/m]
 * @param place - the place [m]
 * @param cell - index of the cell under it or beside it [count]
 * @returns level [m]
 */
export function levelAtM(surface: Surface, slopes: Gradients, place: PlanPoint, cell: number): number {
  const { frame, share, levelM } = surface
  const x = (place.eastM - frame.westM) / frame.cellM - 0.5
  const y = frame.rows - 0.5 - (place.northM - frame.southM) / frame.cellM
  const [column, row] = [Math.floor(x), Math.floor(y)]
  const fits = column >= 0 && row >= 0 && column + 1 < frame.columns && row + 1 < frame.rows
  const north = row * frame.columns + column
  const south = north + frame.columns
  const four = [north, north + 1, south, south + 1]
  if (!fits || four.some((corner) => !share[corner])) return onSlopeM(surface, slopes, place, cell)
  const [toEast, toSouth] = [x - column, y - row]
  const [nw, ne, sw, se] = four.map((corner) => levelM[corner] ?? 0)
  const upper = (nw ?? 0) * (1 - toEast) + (ne ?? 0) * toEast
  const lower = (sw ?? 0) * (1 - toEast) + (se ?? 0) * toEast
  return upper * (1 - toSouth) + lower * toSouth
}

function onSlopeM(surface: Surface, slopes: Gradients, place: PlanPoint, cell: number): number {
  const centre = cellCentre(surface.frame, cell)
  return (
    (surface.levelM[cell] ?? 0) +
    (slopes.east[cell] ?? 0) * (place.eastM - centre.eastM) +
    (slopes.north[cell] ?? 0) * (place.northM - centre.northM)
  )
}
