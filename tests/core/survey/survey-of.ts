import { cellAt, type PlanPoint } from '#core/geometry'
import {
  surfaceFrom,
  type Breakline,
  type GroundSurvey,
  type Surface,
  type SurfaceOptions,
} from '#core/survey'

/** The surface of a survey that must have one. */
export function surfaceOf(ground: GroundSurvey, options: SurfaceOptions = {}): Surface {
  const outcome = surfaceFrom(ground, options)
  if (!outcome.ok) throw new Error(outcome.problems.map((problem) => problem.what).join(' '))
  return outcome.value
}

/** A spot level. */
export const spot = (eastM: number, northM: number, levelM: number, mark?: string) => ({
  eastM,
  northM,
  levelM,
  ...(mark === undefined ? {} : { mark }),
})

/** An edge line through corners of east, north and, where known, level. */
export const edge = (id: string, ...corners: [number, number, number?][]): Breakline => ({
  id,
  kind: 'top',
  vertices: corners.map(([eastM, northM, levelM]) => ({
    eastM,
    northM,
    ...(levelM === undefined ? {} : { levelM }),
  })),
})

/** A wall through corners of east, north, level on the left and on the right. */
export const wall = (id: string, ...corners: [number, number, number, number][]): Breakline => ({
  id,
  kind: 'wall',
  vertices: corners.map(([eastM, northM, leftM, rightM]) => ({ eastM, northM, leftM, rightM })),
})

/** Level of the cell over a place [m]. */
export function levelAtM({ frame, levelM }: Surface, place: PlanPoint): number {
  const cell = cellAt(frame, place)
  if (cell === undefined) throw new Error('off the grid')
  return levelM[cell]!
}

/** What the notes of one kind say. */
export const said = ({ notes }: Pick<Surface, 'notes'>, kind: Surface['notes'][number]['kind']): string[] =>
  notes.filter((note) => note.kind === kind).map((note) => note.what)

/** Plan area of the plot [m²]. */
export const planM2 = ({ share, frame }: Surface): number =>
  share.reduce((sum, part) => sum + part, 0) * frame.cellM ** 2

/** Ground of the plot above level 0 [m³]. */
export const volumeM3 = ({ share, levelM, frame }: Surface): number =>
  share.reduce((sum, part, cell) => sum + part * levelM[cell]!, 0) * frame.cellM ** 2
